import { buildAtInstant } from '$lib/hardware/buildAtInstant';
import { distanceReached } from '$lib/hardware/distanceReached';
import type { Ledger } from '../ledger/openLedger';
import { listBuildRecords } from './builds';
import { axisOfWheel } from './distances';
import { listPeriods } from './periodRows';

/** What was on a wheel at an instant and how far it had been ridden. */
export interface WheelAtInstant {
	/** null = none was fitted. At the instant of a change it is the build that came off. */
	build: { id: number; name: string } | null;
	/** metres of the wheel, recorded and unlogged */
	wheelM: number;
	/** metres of that build on this wheel; null without a build */
	buildM: number | null;
}

/** A function for one wheel, so that many instants need its distances only once. */
export function wheelAtInstants(ledger: Ledger, wheelId: number): (atMs: number) => WheelAtInstant {
	const axis = axisOfWheel(ledger, wheelId);
	const periods = listPeriods(ledger);
	const names = new Map(listBuildRecords(ledger).map(({ id, name }) => [id, name]));
	return (atMs) => {
		const buildId = buildAtInstant(wheelId, atMs, periods);
		const ofBuild = axis.filter((piece) => piece.buildId === buildId);
		return {
			build: buildId === null ? null : { id: buildId, name: names.get(buildId) ?? '' },
			wheelM: distanceReached(axis, atMs),
			buildM: buildId === null ? null : distanceReached(ofBuild, atMs)
		};
	};
}
