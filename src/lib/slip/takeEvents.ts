import { placeCandidate, quickFeatures, type Placed } from './candidateFeatures';
import { explanationFeatures } from './gearFeatures';
import { LEAST_LOG_ODDS, LEAST_REPORTED_DEG, SAME_SLIP_S } from './reportLimits';
import { reportSizeDeg } from './reportSizeDeg';
import type { RideContext } from './rideContext';
import { mayScore, scoreCandidate } from './scoreCandidate';
import { stateFeatures } from './stateFeatures';

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
	for (const { placed, features } of worthAsking(context)) {
		stateFeatures(context, placed, features);
		const logOdds = scoreCandidate(features);
		if (logOdds >= LEAST_LOG_ODDS) strong.push({ placed, logOdds });
	}
	strong.sort((a, b) => b.logOdds - a.logOdds);
	const taken: Taken[] = [];
	for (const one of strong) {
		if (taken.every((other) => Math.abs(other.placed.from - one.placed.from) >= SAME_SLIP_S)) taken.push(one);
	}
	return taken.sort((a, b) => a.placed.from - b.placed.from);
}

/** A candidate and the first numbers of its features. */
interface Asked {
	readonly placed: Placed;
	readonly features: number[];
}

/**
 * Candidates that are large enough and can still reach the limit. Features that take long are computed only where the
 * others leave it open, so that nine in ten candidates are never asked for them; what is taken is the same.
 */
function worthAsking(context: RideContext): Asked[] {
	const asked: Asked[] = [];
	for (const candidate of context.candidates) {
		const placed = placeCandidate(context, candidate);
		if (reportSizeDeg(context, placed) < LEAST_REPORTED_DEG) continue;
		asked.push({ placed, features: quickFeatures(context, placed) });
	}
	const open = stillOpen(asked);
	for (const { placed, features } of open) explanationFeatures(context, placed, features);
	return stillOpen(open);
}

function stillOpen(asked: readonly Asked[]): Asked[] {
	const may = mayScore(
		asked.map(({ features }) => features),
		LEAST_LOG_ODDS
	);
	return asked.filter((_, i) => may[i]);
}
