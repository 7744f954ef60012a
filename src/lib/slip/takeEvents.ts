import { placeCandidate, QUICK_FEATURES, quickFeatures, type Placed } from './candidateFeatures';
import { explanationFeatures } from './gearFeatures';
import { FeatureColumns } from './model/featureColumns';
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
		explanationFeatures(context, placed, features);
		if (scoreCandidate(features) < LEAST_LOG_ODDS) continue;
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
	const large = context.candidates
		.map((candidate) => placeCandidate(context, candidate))
		.filter((placed) => reportSizeDeg(context, placed) >= LEAST_REPORTED_DEG);
	const known = new FeatureColumns(QUICK_FEATURES, large.length);
	for (const placed of large) known.add(quickFeatures(context, placed));
	return mayScore(known, LEAST_LOG_ODDS).map((i) => ({ placed: large[i], features: known.row(i) }));
}
