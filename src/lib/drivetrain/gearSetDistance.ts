/** A gear as far as it takes to tell bikes apart. */
export interface RiddenGear {
	/** metres per crank turn, > 0 */
	readonly developmentM: number;
	/** seconds ridden in it, >= 0 */
	readonly seconds: number;
}

/**
 * How far the gears of a ride lie from the gear set of a bike: the mean relative step from each gear to the
 * nearest of the set, weighted by the time ridden in it. A set that is much finer is nearer to everything,
 * so compare sets of like size or ask for a clear lead.
 *
 * @param gears learned from the ride
 * @param developmentsM gear set of the bike, metres per crank turn, > 0
 * @returns 0 for the same gears, 0.02 for 2 % apart; NaN when either side has nothing to compare
 * @example gearSetDistance([{ developmentM: 5.1, seconds: 60 }], [2.5, 5]) // 0.0198 (ln 1.02)
 * Source: common practice, no source.
 */
export function gearSetDistance(gears: readonly RiddenGear[], developmentsM: readonly number[]): number {
	const set = developmentsM.filter((metres) => metres > 0);
	let weighted = 0;
	let seconds = 0;
	for (const gear of gears) {
		if (!(gear.developmentM > 0) || !(gear.seconds > 0) || set.length === 0) continue;
		const steps = set.map((metres) => Math.abs(Math.log(gear.developmentM / metres)));
		weighted += Math.min(...steps) * gear.seconds;
		seconds += gear.seconds;
	}
	return seconds > 0 ? weighted / seconds : NaN;
}
