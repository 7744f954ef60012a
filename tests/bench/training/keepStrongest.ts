import { LEAST_REPORTED_DEG, SAME_SLIP_S } from '../../../src/lib/slip/reportLimits';
import type { GatheredRide } from './gather';
import type { Found } from './scoreEvents';

/** The candidates that would be reported at a limit: large enough, strong enough, none twice. */
export function keepStrongest(
	part: Pick<GatheredRide, 'startS' | 'sizeDeg' | 'overrunDeg'>,
	logOdds: readonly number[],
	least: number
): Found[] {
	const order = logOdds
		.map((_, i) => i)
		.filter((i) => logOdds[i] >= least && part.sizeDeg[i] >= LEAST_REPORTED_DEG);
	order.sort((a, b) => logOdds[b] - logOdds[a]);
	const kept: number[] = [];
	for (const i of order) {
		if (kept.every((k) => Math.abs(part.startS[k] - part.startS[i]) >= SAME_SLIP_S)) kept.push(i);
	}
	return kept
		.sort((a, b) => a - b)
		.map((i) => ({ startS: part.startS[i], overrunDeg: part.overrunDeg[i], strength: logOdds[i] }));
}
