import { buildAtInstant } from '$lib/hardware/buildAtInstant';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { allRideFacts, type RideFacts } from '../rides/rideFacts';
import type { Instant } from '../views';
import {
	countsAsSlip,
	listIncidents,
	standingClosing,
	type IncidentClosing,
	type IncidentKind,
	type IncidentRecord,
	type IncidentSeverity
} from './incidentsRows';
import { wheelAtInstants, type WheelAtInstant } from './inspectionsWheel';
import { listPeriods } from './periodRows';
import { listWheelRecords } from './wheels';

type ClosingView = Omit<IncidentClosing, 'atMs' | 'supersededMs'> & { at: Instant };

/** An incident with what was on the wheel then and how it stands. */
export interface IncidentView extends WheelAtInstant {
	id: number;
	wheel: { id: number; name: string };
	at: Instant;
	reportedBy: number | null;
	/** code of who reported it; null = somebody outside the workshop */
	reporter: string | null;
	odometerM: number | null;
	what: IncidentKind;
	felt: string;
	severity: IncidentSeverity;
	injured: boolean;
	writtenBy: string;
	writtenAt: Instant;
	rowVersion: number;
	/** counts as a slip of its build, beside the rate */
	counts: boolean;
	closing: ClosingView | null;
	/** closings that were taken back, the oldest first */
	earlierClosings: ClosingView[];
	/** a ride file covers the instant: its events stand there */
	coveredBy: { id: number; fileName: string } | null;
}

/** The incidents of a wheel, the newest first. */
export function incidentsOfWheel(ledger: Ledger, wheelId: number): IncidentView[] {
	const wheel = listWheelRecords(ledger).find(({ id }) => id === wheelId);
	if (!wheel) return [];
	const at = wheelAtInstants(ledger, wheelId);
	const rides = allRideFacts(ledger, wheelId);
	return listIncidents(ledger, wheelId)
		.reverse()
		.map((record) => viewOf(record, wheel, at(record.atMs), rides));
}

/** The incidents of a build on whatever wheel, the newest first. */
export function incidentsOfBuild(ledger: Ledger, buildId: number): IncidentView[] {
	const wheelIds = new Set(listIncidents(ledger).map(({ wheelId }) => wheelId));
	return [...wheelIds]
		.flatMap((wheelId) => incidentsOfWheel(ledger, wheelId))
		.filter(({ build }) => build?.id === buildId)
		.sort((a, b) => b.at.localeCompare(a.at));
}

/** How the incidents of a build stand. They are no part of the rate: nobody knows the km they stand for. */
export interface IncidentCounts {
	/** not closed yet; they count */
	open: number;
	/** open ones and those that were found to be slips */
	counted: number;
	/** closed as something else; listed, not counted */
	apart: number;
	/** of the counted ones those in which somebody fell or was hurt */
	harmed: number;
	/** wheel of the newest open one; null = none is open */
	openWheelId: number | null;
}

export const NO_INCIDENTS: IncidentCounts = { open: 0, counted: 0, apart: 0, harmed: 0, openWheelId: null };

/** By build; a build without incidents is not in it. */
export function incidentCounts(ledger: Ledger): ReadonlyMap<number, IncidentCounts> {
	return remember(ledger, 'incident counts', () => {
		const periods = listPeriods(ledger);
		const counts = new Map<number, IncidentCounts>();
		for (const incident of listIncidents(ledger)) {
			const buildId = buildAtInstant(incident.wheelId, incident.atMs, periods);
			if (buildId === null) continue;
			const before = counts.get(buildId) ?? NO_INCIDENTS;
			const counted = countsAsSlip(incident) ? 1 : 0;
			const open = standingClosing(incident) === null;
			const harmed = incident.severity === 'fell' || incident.injured === 1 ? counted : 0;
			counts.set(buildId, {
				open: before.open + (open ? 1 : 0),
				counted: before.counted + counted,
				apart: before.apart + 1 - counted,
				harmed: before.harmed + harmed,
				openWheelId: open ? incident.wheelId : before.openWheelId
			});
		}
		return counts;
	});
}

function viewOf(
	record: IncidentRecord,
	wheel: { id: number; name: string },
	then: WheelAtInstant,
	rides: readonly RideFacts[]
): IncidentView {
	const { wheelId, atMs, reporterCode, createdMs, closings, injured, ...rest } = record;
	const covering = rides.find(
		(ride) =>
			ride.wheelId === wheelId && ride.withdrawnReason === null && ride.startMs <= atMs && atMs <= ride.endMs
	);
	const standing = standingClosing(record);
	return {
		...rest,
		...then,
		wheel: { id: wheel.id, name: wheel.name },
		at: toInstant(atMs),
		reporter: reporterCode,
		injured: injured === 1,
		writtenAt: toInstant(createdMs),
		counts: countsAsSlip(record),
		closing: standing && closingView(standing),
		earlierClosings: closings.filter((closing) => closing !== standing).map(closingView),
		coveredBy: covering ? { id: covering.id, fileName: covering.fileName } : null
	};
}

function closingView({ outcome, reason, by, atMs }: IncidentClosing): ClosingView {
	return { outcome, reason, by, at: toInstant(atMs) };
}
