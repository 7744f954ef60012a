import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { trailVersion } from '../ledger/trailVersion';
import { remember } from '../ledger/remember';
import { programmeRows } from '../rates/programmeRows';
import { evidenceParts } from '../rides/evidenceParts';
import type { BuildRow, Instant } from '../views';
import { findBuild } from './builds';
import { listPeriods } from './periodRows';
import { distanceOf, ridesInPeriod } from './wheelViews';
import { listWheelRecords } from './wheels';

/** one build with where it was fitted; its rides are a list of their own */
export interface BuildView extends BuildRow {
	stepHubDeg: number | null;
	periods: {
		id: number;
		wheel: { id: number; name: string };
		from: Instant;
		until: Instant | null;
		totalM: number;
		rides: number;
		version: number;
	}[];
}

/** null when there is no such build */
export function buildView(ledger: Ledger, buildId: number): BuildView | null {
	return remember(ledger, `build ${buildId}`, () => compute(ledger, buildId));
}

function compute(ledger: Ledger, buildId: number): BuildView | null {
	const row = programmeRows(ledger).find(({ id }) => id === buildId);
	if (!row) return null;
	const rides = evidenceParts(ledger).filter((ride) => ride.buildId === buildId);
	const wheels = new Map(listWheelRecords(ledger).map(({ id, name }) => [id, name]));
	const periods = listPeriods(ledger)
		.filter((period) => period.buildId === buildId)
		.sort((a, b) => a.fromMs - b.fromMs || a.id - b.id);
	return {
		...row,
		stepHubDeg: findBuild(ledger, buildId).stepHubDeg,
		periods: periods.map((period) => {
			const inside = ridesInPeriod(period, rides);
			return {
				id: period.id,
				wheel: { id: period.wheelId, name: wheels.get(period.wheelId) ?? '' },
				from: toInstant(period.fromMs),
				until: period.untilMs === null ? null : toInstant(period.untilMs),
				totalM: distanceOf(inside),
				rides: inside.length,
				version: trailVersion(ledger, 'fitted period', period.id)
			};
		})
	};
}
