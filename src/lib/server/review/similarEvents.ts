import type { Ledger } from '../ledger/openLedger';

/** An event that somebody decided, told by its size, the power lost and the torque before it. */
export interface SimilarEvent {
	readonly verdict: 'confirmed' | 'rejected';
	readonly reason: string | null;
	readonly crankDeg: number;
	readonly powerLost: number | null;
	readonly torqueNm: number | null;
}

/** as many of each verdict */
const OF_EACH = 2;

/**
 * The events most like this one among those with a verdict, two confirmed and two rejected: nearest by the logarithm
 * of the overrun, the share of power lost and the torque before (scales: a doubling, 0.3, 10 Nm; common practice,
 * no source). What is not known counts as one scale away.
 */
export function similarEvents(
	ledger: Ledger,
	like: {
		readonly eventId: number | null;
		readonly version: number;
		readonly crankDeg: number;
		readonly powerLost: number | null;
		readonly torqueNm: number | null;
	}
): SimilarEvent[] {
	const decided = ledger.database
		.prepare<[number, number], SimilarEvent>(
			`SELECT v.verdict, v.reason, e.overrun_crank_deg AS crankDeg, e.power_lost AS powerLost,
				e.hub_torque_nm AS torqueNm FROM slip_event e JOIN verdict v ON v.id = e.verdict_id
			WHERE e.version = ? AND e.id <> ? AND e.kind = 'slip'`
		)
		.all(like.version, like.eventId ?? -1);
	const apart = (a: number | null, b: number | null, scale: number) =>
		a === null || b === null ? 1 : ((a - b) / scale) ** 2;
	const distance = ({ crankDeg, powerLost, torqueNm }: SimilarEvent) =>
		apart(Math.log2(crankDeg), Math.log2(like.crankDeg), 1) +
		apart(powerLost, like.powerLost, 0.3) +
		apart(torqueNm, like.torqueNm, 10);
	const nearest = [...decided].sort((a, b) => distance(a) - distance(b));
	return (['confirmed', 'rejected'] as const).flatMap((verdict) =>
		nearest.filter((event) => event.verdict === verdict).slice(0, OF_EACH)
	);
}
