/**
 * Strength of signs from the log odds of the trees: 0 to 1, rising. It says how clearly the recording speaks for a
 * slip at the prevalence of the benchmark's rides; it is not the chance that this event is one.
 *
 * @param logOdds of scoreCandidate
 * @example strengthOfSigns(0) // 0.5
 */
export function strengthOfSigns(logOdds: number): number {
	return 1 / (1 + Math.exp(-logOdds));
}
