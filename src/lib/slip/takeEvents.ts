import { candidateFeatures, placeCandidate, type Placed } from './candidateFeatures';
import { LEAST_LOG_ODDS, LEAST_REPORTED_DEG, SAME_SLIP_S } from './reportLimits';
import { reportSizeDeg } from './reportSizeDeg';
import type { RideContext } from './rideContext';
import { scoreCandidate } from './scoreCandidate';

export interface Taken {
	readonly placed: Placed;
	readonly logOdds: number;
}

/**
 * Takes the candidates that are reported as events: large enough, signs strong enough, none twice.
 *
 * @param context what was learned of the ride
 * @returns events in order of time
 */
export function takeEvents(context: RideContext): Taken[] {
	const strong: Taken[] = [];
	for (const candidate of context.candidates) {
		const placed = placeCandidate(context, candidate);
		if (reportSizeDeg(context, placed) < LEAST_REPORTED_DEG) continue;
		const logOdds = scoreCandidate(candidateFeatures(context, placed));
		if (logOdds >= LEAST_LOG_ODDS) strong.push({ placed, logOdds });
	}
	strong.sort((a, b) => b.logOdds - a.logOdds);
	const taken: Taken[] = [];
	for (const one of strong) {
		if (taken.every((other) => Math.abs(other.placed.from - one.placed.from) >= SAME_SLIP_S)) taken.push(one);
	}
	return taken.sort((a, b) => a.placed.from - b.placed.from);
}
