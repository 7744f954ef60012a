import { placeCandidate, QUICK_FEATURES, quickFeatures, type Placed } from './candidateFeatures';
import { explanationFeatures } from './gearFeatures';
import { FeatureColumns } from './model/featureColumns';
import { joinedLogOdds, leastOfTrees } from './model/joinedLogOdds';
import { LEAST_LOG_ODDS, LEAST_REPORTED_DEG, SAME_SLIP_S } from './reportLimits';
import { reportSizeDeg } from './reportSizeDeg';
import type { RideContext } from './rideContext';
import { firstSetAsks, mayScore, scoreCandidate, scoreWindow } from './scoreCandidate';
import { slipWindow } from './slipWindow';
import { stateFeatures } from './stateFeatures';

/** With less than this of the trees no net lifts a candidate over the limit. */
const LEAST_OF_TREES = leastOfTrees(LEAST_LOG_ODDS);

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
	for (const { placed, sizeDeg, features } of worthAsking(context)) {
		explanationFeatures(context, placed, features);
		if (scoreCandidate(features) < LEAST_OF_TREES) continue;
		stateFeatures(context, placed, features);
		const trees = scoreCandidate(features);
		if (trees < LEAST_OF_TREES || !firstSetAsks(features)) continue;
		const logOdds = joinedLogOdds(trees, scoreWindow(slipWindow(context, placed, sizeDeg)));
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
	readonly sizeDeg: number;
	readonly features: number[];
}

/**
 * Candidates that are large enough and can still reach the limit. Features that take long are computed only where the
 * others leave it open, so that six in seven candidates are never asked for them; what is taken is the same.
 */
function worthAsking(context: RideContext): Asked[] {
	const large = context.candidates
		.map((candidate) => {
			const placed = placeCandidate(context, candidate);
			return { placed, sizeDeg: reportSizeDeg(context, placed) };
		})
		.filter(({ sizeDeg }) => sizeDeg >= LEAST_REPORTED_DEG);
	const known = new FeatureColumns(QUICK_FEATURES, large.length);
	for (const { placed } of large) known.add(quickFeatures(context, placed));
	return mayScore(known, LEAST_OF_TREES).map((i) => ({ ...large[i], features: known.row(i) }));
}
