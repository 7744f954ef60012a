/** A gear as one ride shows it, or as many rides together do. */
export interface LearnedGear {
	/** metres per crank turn */
	readonly developmentM: number;
	/** seconds ridden in it */
	readonly seconds: number;
}

/** Gears of two rides nearer to each other than this are one gear: less than any two of a bike's own differ. */
const SAME = 0.015;

/**
 * The gears of a bike out of the gears that each of its rides learned: neighbours within 1.5 % become one, in
 * the mean by time. Gears that make up less than 1 % of the time are left out: they are mostly shifts.
 *
 * @param learned gears of all rides of the bike, in any order
 * @returns from the lowest development to the highest; empty without rides
 * @example gatherGears([{ developmentM: 5, seconds: 60 }, { developmentM: 5.02, seconds: 60 }])
 *   // [{ developmentM: 5.01, seconds: 120 }]
 * Source: common practice, no source.
 */
export function gatherGears(learned: readonly LearnedGear[]): LearnedGear[] {
	const inOrder = learned
		.filter(({ developmentM, seconds }) => developmentM > 0 && seconds > 0)
		.sort((a, b) => a.developmentM - b.developmentM || a.seconds - b.seconds);
	const groups: { weightedM: number; seconds: number }[] = [];
	for (const { developmentM, seconds } of inOrder) {
		const last = groups[groups.length - 1];
		if (last && developmentM / (last.weightedM / last.seconds) - 1 < SAME) {
			last.weightedM += developmentM * seconds;
			last.seconds += seconds;
		} else groups.push({ weightedM: developmentM * seconds, seconds });
	}
	const total = groups.reduce((sum, { seconds }) => sum + seconds, 0);
	return groups
		.filter(({ seconds }) => seconds >= 0.01 * total)
		.map(({ weightedM, seconds }) => ({ developmentM: weightedM / seconds, seconds }));
}
