import type { Gear } from './bike';
import { compareGears, type StatedGears } from './compareGears';

/** A circumference with the limits within which it lies with 90 % probability, metres. */
export interface LearnedCircumference {
	readonly circumferenceM: number;
	readonly lowerM: number;
	readonly upperM: number;
	/** gears that it comes from */
	readonly gears: number;
}

/** With this share of the riding explained by what is stated, its own gears are taken; else those that fitted best. */
const STATED_FITS = 0.85;
/** A gear that was in for less than a minute says little. */
const LEAST_SECONDS = 60;
/** One or two gears fit any circumference with other teeth. */
const LEAST_GEARS = 3;
/** 90 % of a normal distribution lie within this many standard deviations. */
const NORMAL_90 = 1.645;
/** The peaks of the ratio are read on a grid of 0.4 %. */
const READING = 0.002;

/**
 * Rolled circumference of the driven tyre from the gears of a ride whose tooth counts are known: development over
 * ratio, in the mean of the gears by time.
 *
 * @param gears the ride's gears; those without tooth counts say nothing
 * @param stated what the bike is said to have, or null. Where that explains the ride, each gear is the stated one
 *   next to it: with many gears close together another circumference with other teeth may fit nearly as well
 * @returns null with fewer than three gears of a minute: one or two fit any circumference with other teeth
 * @example learnedCircumference(gears of 6.3 m in 48/16, 4.2 m in 48/24, 5.25 m in 40/16, null) // 2.1 m
 */
export function learnedCircumference(
	gears: readonly Gear[],
	stated: StatedGears | null
): LearnedCircumference | null {
	const known = teethOf(gears, stated);
	const used = gears
		.map(({ developmentM, seconds }, i) => ({ developmentM, seconds, ratio: known[i] }))
		.filter(({ ratio, seconds }) => ratio > 0 && seconds >= LEAST_SECONDS);
	if (used.length < LEAST_GEARS) return null;
	const values = used.map(({ developmentM, ratio }) => Math.log(developmentM / ratio));
	const total = used.reduce((sum, { seconds }) => sum + seconds, 0);
	const mean = used.reduce((sum, { seconds }, i) => sum + (seconds / total) * values[i], 0);
	// the number of gears that would say as much if all had been ridden alike
	const effective = total ** 2 / used.reduce((sum, { seconds }) => sum + seconds ** 2, 0);
	const variance = used.reduce((sum, { seconds }, i) => sum + (seconds / total) * (values[i] - mean) ** 2, 0);
	const sd = Math.hypot(Math.sqrt(variance / Math.max(1, effective - 1)), READING);
	return {
		circumferenceM: Math.exp(mean),
		lowerM: Math.exp(mean - NORMAL_90 * sd),
		upperM: Math.exp(mean + NORMAL_90 * sd),
		gears: used.length
	};
}

/** Ratio of each gear by its teeth; NaN = not known. */
function teethOf(gears: readonly Gear[], stated: StatedGears | null): number[] {
	const compared = stated && compareGears(stated, gears);
	if (stated && compared && compared.explained >= STATED_FITS) {
		return compared.gears.map(({ label, developmentM, off }) =>
			label === null ? NaN : developmentM / (1 + off) / stated.circumferenceM
		);
	}
	return gears.map(({ chainring, sprocket }) =>
		chainring === null || sprocket === null ? NaN : chainring / sprocket
	);
}
