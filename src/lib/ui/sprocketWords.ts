import type { Formats } from './formats';
import { ifSlips } from './ifSlips';

/** Sprockets set against the others; the server's view fits. */
export interface SprocketFigures {
	readonly sprockets: readonly {
		readonly teeth: number;
		readonly rate: { readonly count: number };
		readonly ratio: number | null;
		readonly lower: number;
		readonly upper: number | null;
		readonly standsOut: boolean;
	}[];
	readonly notKnownShare: number;
}

/** with fewer slips silence would read like an answer (common practice, no source) */
const LEAST_SLIPS = 5;

/**
 * Whether one sprocket stands out at the same hub torque, as a hint for the workbench.
 *
 * @param unreviewed how many of the counted events nobody has reviewed: with those it is a hint on a condition
 */
export function sprocketsWords(
	{ sprockets, notKnownShare }: SprocketFigures,
	formats: Formats,
	unreviewed = 0
): string {
	const without =
		notKnownShare > 0
			? ` Teeth or torque are not known of ${formats.share(notKnownShare)} of the observed distance.`
			: '';
	if (sprockets.length === 0) return `Sprockets cannot be set against each other here.${without}`;
	const slips = sprockets.reduce((sum, { rate }) => sum + rate.count, 0);
	if (slips < LEAST_SLIPS)
		return `${slips === 0 ? 'No slip' : `Only ${formats.number(slips)}`} with known teeth and torque: too few to set sprockets against each other.${without}`;
	const apart = sprockets.filter(({ standsOut }) => standsOut);
	if (apart.length === 0)
		return `No single sprocket is shown to slip more than the others at the same hub torque.${without}`;
	const named = apart.map((one) => `${formats.number(one.teeth)} teeth, ${sprocketRatio(one, formats)}`);
	return `More than the others at the same hub torque${ifSlips(unreviewed, formats)}: ${named.join('; ')}. Look at the chain and at that sprocket first: a hint, no proof.${without}`;
}

/** "3.1 times (1.2 to 8.4)" of one sprocket against the others. */
export function sprocketRatio(
	{ ratio, lower, upper }: SprocketFigures['sprockets'][number],
	formats: Formats
): string {
	const limits = `${formats.figure(lower)} to ${upper === null ? 'no limit' : formats.figure(upper)}`;
	return ratio === null ? `no figure (${limits})` : `${formats.figure(ratio)} times (${limits})`;
}
