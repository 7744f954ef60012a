import scorer from './model/scorer.json';
import type { ScorerModel } from './model/scorerModel';

/**
 * Strength of signs from the log odds of the trees: the share of slips among reported events of this log odds on a
 * wheel that slips 20 times in 1000 km (the stated prevalence; learned from rides left out). Another wheel slips
 * more or less often: it is not the chance that this event is one, and strengths are never added up as counts.
 *
 * @param logOdds of scoreCandidate
 * @returns 0 to 1, rising with log odds
 */
export function strengthOfSigns(logOdds: number): number {
	const { intercept, slope } = (scorer as ScorerModel).strength;
	return 1 / (1 + Math.exp(-(intercept + slope * logOdds)));
}
