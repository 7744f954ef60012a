import type { EventKind } from '$lib/slip/analysis';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { EventView, RejectReason } from '../views';

interface StoredEvent {
	id: number;
	startS: number;
	endS: number;
	atM: number;
	kind: EventKind;
	crankDeg: number;
	crankLowerDeg: number;
	crankUpperDeg: number;
	hubDeg: number;
	gear: string | null;
	torqueNm: number | null;
	torqueLowerNm: number | null;
	torqueUpperNm: number | null;
	powerLost: number | null;
	strength: number;
	observed: number;
	reasons: string;
	verdictId: number | null;
	verdict: 'confirmed' | 'rejected' | null;
	reason: RejectReason | null;
	note: string | null;
	byCode: string | null;
	verdictMs: number | null;
}

/**
 * The events of a ride by one analysis version, in order, with the verdicts that stand.
 *
 * @param ageAt metres since the build was fitted, from seconds and metres of the ride; null = no build known
 */
export function rideEvents(
	ledger: Ledger,
	ride: { id: number; startMs: number },
	version: number,
	ageAt: (startS: number, atM: number) => number | null
): EventView[] {
	const events = ledger.database
		.prepare<[number, number], StoredEvent>(
			`SELECT e.id, e.start_s AS startS, e.end_s AS endS, e.at_m AS atM, e.kind,
				e.overrun_crank_deg AS crankDeg, e.overrun_crank_lower_deg AS crankLowerDeg,
				e.overrun_crank_upper_deg AS crankUpperDeg, e.overrun_hub_deg AS hubDeg, e.gear,
				e.hub_torque_nm AS torqueNm, e.hub_torque_lower_nm AS torqueLowerNm,
				e.hub_torque_upper_nm AS torqueUpperNm, e.power_lost AS powerLost, e.strength, e.observed,
				e.reasons, v.id AS verdictId, v.verdict, v.reason, v.note, p.code AS byCode, v.at_ms AS verdictMs
			FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
			LEFT JOIN person p ON p.id = v.actor_id
			WHERE e.ride_id = ? AND e.version = ? ORDER BY e.start_s, e.id`
		)
		.all(ride.id, version);
	return events.map((event) => toView(event, ride.startMs, ageAt(event.startS, event.atM)));
}

function toView(event: StoredEvent, rideStartMs: number, buildDistanceM: number | null): EventView {
	return {
		id: event.id,
		startS: event.startS,
		endS: event.endS,
		startedAt: toInstant(rideStartMs + event.startS * 1000),
		kind: event.kind,
		overrunCrankDeg: { value: event.crankDeg, lower: event.crankLowerDeg, upper: event.crankUpperDeg },
		overrunHubDeg: event.hubDeg,
		gear: event.gear,
		hubTorqueNm:
			event.torqueNm === null
				? null
				: {
						value: event.torqueNm,
						lower: event.torqueLowerNm ?? event.torqueNm,
						upper: event.torqueUpperNm ?? event.torqueNm
					},
		powerLost: event.powerLost,
		strength: event.strength,
		observed: event.observed === 1,
		atM: event.atM,
		buildDistanceM,
		reasons: JSON.parse(event.reasons) as string[],
		verdict: event.verdict && {
			id: event.verdictId ?? 0,
			verdict: event.verdict,
			reason: event.reason,
			note: event.note ?? '',
			by: event.byCode ?? '',
			at: toInstant(event.verdictMs ?? 0)
		}
	};
}
