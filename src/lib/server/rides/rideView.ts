import type { ResultDetail } from '../../../jobs/analysis/messages';
import { findBuild } from '../hardware/builds';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { feltSlips } from '../marks/feltSlips';
import { riderMarks } from '../marks/riderMarks';
import type { RideView } from '../views';
import { ageOnRide } from './ageOnRide';
import { rideFacts } from './rideFacts';
import { rideEvents } from './rideEvents';
import { rideRows } from './rideRow';
import { recordedGear } from './recordedGear';
import { rideSummary } from './rideSummary';

/** All that a ride's page shows beside its traces; null when there is no such ride. */
export function rideView(ledger: Ledger, rideId: number): RideView | null {
	const ride = rideFacts(ledger, rideId);
	if (!ride) return null;
	const version = currentVersion(ledger);
	const detail = readDetail(ledger, rideId, version);
	const eventList = rideEvents(ledger, ride, version, ageOnRide(ledger, ride));
	const [row] = rideRows(ledger, [ride]);
	return {
		...row,
		analysisVersion: version,
		drivenM: ride.drivenM,
		summary: rideSummary({ ...row, eventList, analysed: ride.analysed === 1 }),
		warnings: [...(detail?.warnings ?? [])],
		gears: (detail?.gears ?? []).map(({ label, ratio, developmentM, seconds }) => ({
			label,
			ratio,
			developmentM,
			seconds
		})),
		eventList,
		marksS: [...(detail?.marksS ?? [])],
		shifts: (detail?.shifts ?? []).map((shift) => ({ timeS: shift.timeS, gear: recordedGear(shift) })),
		riderMarks: riderMarks(ledger, ride, eventList),
		felt: feltSlips(ledger, ride, eventList),
		gaps: (detail?.gaps ?? []).map(([startS, endS]) => [startS, endS]),
		pauses: (detail?.pauses ?? []).map(([startS, endS]) => [startS, endS]),
		observedStretches: ledger.database
			.prepare<[number, number], RideView['observedStretches'][number]>(
				`SELECT start_s AS startS, end_s AS endS, start_m AS startM, end_m AS endM
				FROM observed_stretch WHERE ride_id = ? AND version = ? ORDER BY start_s`
			)
			.all(rideId, version),
		trainer: asTruth(ride.trainer ?? ride.fileTrainer),
		wet: asTruth(ride.wet),
		sourceSha256: ride.sha256,
		twinOf: ride.twinId === null ? null : { id: ride.twinId, fileName: ride.twinFileName ?? '' },
		stepHubDeg: ride.buildId === null ? null : findBuild(ledger, ride.buildId).stepHubDeg
	};
}

function readDetail(ledger: Ledger, rideId: number, version: number): ResultDetail | null {
	const row = ledger.database
		.prepare<[number, number], { detail: string }>(
			'SELECT detail FROM result_detail WHERE ride_id = ? AND version = ?'
		)
		.get(rideId, version);
	return row ? (JSON.parse(row.detail) as ResultDetail) : null;
}

function asTruth(value: number | null): boolean | null {
	return value === null ? null : value === 1;
}
