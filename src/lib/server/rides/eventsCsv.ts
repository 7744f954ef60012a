import type { RideView } from '../views';
import { csvCell } from '$lib/tables/csvCell';

const COLUMNS = [
	'ride',
	'started_at_utc',
	'start_s',
	'end_s',
	'kind',
	'overrun_crank_deg',
	'overrun_crank_lower_deg',
	'overrun_crank_upper_deg',
	'overrun_hub_deg',
	'gear',
	'mean_hub_torque_nm',
	'mean_hub_torque_lower_nm',
	'mean_hub_torque_upper_nm',
	'power_lost_share',
	'strength_of_signs',
	'on_observed_stretch',
	'ride_distance_m',
	'build_distance_m',
	'build',
	'wheel',
	'verdict',
	'reject_reason',
	'note'
] as const;

/** The events of a ride as comma-separated values (RFC 4180), one line each, header first. */
export function eventsCsv(ride: RideView): string {
	const lines = ride.eventList.map((event) => [
		ride.fileName,
		event.startedAt,
		event.startS,
		event.endS,
		event.kind,
		event.overrunCrankDeg.value,
		event.overrunCrankDeg.lower,
		event.overrunCrankDeg.upper,
		event.overrunHubDeg,
		event.gear,
		event.hubTorqueNm?.value,
		event.hubTorqueNm?.lower,
		event.hubTorqueNm?.upper,
		event.powerLost,
		event.strength,
		event.observed ? 'yes' : 'no',
		event.atM,
		event.buildDistanceM,
		ride.build?.name,
		ride.wheel?.name,
		event.verdict?.verdict ?? 'not reviewed',
		event.verdict?.reason,
		event.verdict?.note
	]);
	return [[...COLUMNS], ...lines].map((line) => `${line.map(csvCell).join(',')}\r\n`).join('');
}
