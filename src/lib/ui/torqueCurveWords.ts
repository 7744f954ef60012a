import type { Formats } from './formats';
import { countedNoun } from './countedNoun';
import { ifSlips } from './ifSlips';

/** A curve of slips against torque; the server's view fits. */
export interface TorqueCurveFigures {
	readonly kind: 'fit' | 'too few' | 'separated' | 'one torque';
	readonly points: readonly { readonly fromNm: number; readonly slips: number }[];
	readonly withoutTorque: number;
	readonly confidence: number;
	readonly perTenNm: { readonly value: number; readonly lower: number; readonly upper: number } | null;
}

/**
 * How slips go with hub torque, in a sentence with what it rests on.
 *
 * @param unreviewed how many of the counted events nobody has reviewed: a rise of those is no more than a condition
 */
export function torqueCurveWords(curve: TorqueCurveFigures, formats: Formats, unreviewed = 0): string {
	return `${shapeWords(curve, formats, unreviewed)}${withoutWords(curve.withoutTorque, formats, unreviewed)}`;
}

function shapeWords(
	{ kind, points, perTenNm, confidence }: TorqueCurveFigures,
	formats: Formats,
	unreviewed: number
): string {
	const condition = ifSlips(unreviewed, formats);
	const slips = points.reduce((sum, point) => sum + point.slips, 0);
	if (kind === 'one torque')
		return 'Nearly all of it was ridden at one torque: nothing can be said about others.';
	if (kind === 'separated') {
		const from = points.find((point) => point.slips > 0)?.fromNm ?? 0;
		return `All ${countedNoun(2, unreviewed)} lie from ${formats.number(from)}\u00a0Nm on and everything else below${condition}: no smooth curve is steep enough to be drawn.`;
	}
	if (kind === 'too few' || perTenNm === null)
		return `${slips === 0 ? 'No slip' : `Only ${formats.number(slips)} ${countedNoun(slips, unreviewed)}`} with a known torque: too few for a smooth curve.`;
	const figures = `${formats.figure(perTenNm.value)}-fold with each 10 Nm (${formats.share(confidence)} limits ${formats.figure(perTenNm.lower)} to ${formats.figure(perTenNm.upper)})`;
	if (perTenNm.lower > 1) return `The chance of a slip in one power stroke grows ${figures}${condition}.`;
	if (perTenNm.upper < 1)
		return `The chance of a slip in one power stroke falls with torque: ${figures}${condition}. Look for something else than load.`;
	return `The rides do not show whether slips go with torque: ${figures}.`;
}

function withoutWords(count: number, formats: Formats, unreviewed: number): string {
	if (count === 0) return '';
	return ` ${formats.number(count)} ${countedNoun(count, unreviewed)} without a known torque ${count === 1 ? 'is' : 'are'} left out.`;
}
