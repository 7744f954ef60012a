import { development } from './development';
import type { LearnedGear } from './gatherGears';

/** Gears that a bike is said to have. */
export interface StatedGears {
	readonly chainrings: readonly number[];
	readonly cassette: readonly number[];
	/** rolled circumference of the driven tyre, metres */
	readonly circumferenceM: number;
}

export interface ComparedGear extends LearnedGear {
	/** the stated gear next to it, e.g. "46/17"; null when none is near enough */
	readonly label: string | null;
	/** learned / development of that gear - 1; of the nearest one where none is near enough */
	readonly off: number;
}

export interface ComparedGears {
	readonly gears: readonly ComparedGear[];
	/** share of the riding time in gears that a stated one explains, 0 to 1; NaN without learned gears */
	readonly explained: number;
}

/** A learned gear is a stated one when they differ by no more than this (measured scatter 0.7 to 1.6 %). */
export const SAME_GEAR = 0.02;

/**
 * Sets the gears that rides showed beside those that the bike is said to have.
 *
 * @returns one row a learned gear, in their order
 * @example compareGears({ chainrings: [40], cassette: [20], circumferenceM: 2.2 },
 *   [{ developmentM: 4.44, seconds: 60 }]) // label "40/20", off 0.009, explained 1
 * Source: development = chainring / sprocket x circumference; the limit is common practice, no source.
 */
export function compareGears(stated: StatedGears, learned: readonly LearnedGear[]): ComparedGears {
	const pairs = stated.chainrings.flatMap((chainring) =>
		stated.cassette.map((sprocket) => ({
			label: `${chainring}/${sprocket}`,
			developmentM: development(chainring, sprocket, stated.circumferenceM)
		}))
	);
	const gears = learned.map((gear): ComparedGear => {
		let nearest = { label: '', off: NaN };
		for (const { label, developmentM } of pairs) {
			const off = gear.developmentM / developmentM - 1;
			if (!(Math.abs(off) >= Math.abs(nearest.off))) nearest = { label, off };
		}
		return { ...gear, off: nearest.off, label: Math.abs(nearest.off) <= SAME_GEAR ? nearest.label : null };
	});
	const total = gears.reduce((sum, { seconds }) => sum + seconds, 0);
	const known = gears.reduce((sum, { label, seconds }) => sum + (label === null ? 0 : seconds), 0);
	return { gears, explained: total > 0 ? known / total : NaN };
}
