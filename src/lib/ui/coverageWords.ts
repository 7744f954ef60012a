import type { Formats } from './formats';

/** How much a build was ridden at the torque at which the reference slipped; the server's view fits. */
export interface CoverageFigures {
	/** null = the reference has no slip with a known torque */
	readonly fromNm: number | null;
	readonly highestNm: number | null;
	readonly aboveM: number;
	readonly aboveHighestM: number;
}

/**
 * What the new build was asked to bear, beside what made the old one slip.
 *
 * @param unreviewed how many of the counted events of the reference nobody has reviewed: it may not have slipped there
 */
export function coverageWords(
	{ fromNm, highestNm, aboveM, aboveHighestM }: CoverageFigures,
	names: { readonly build: string; readonly reference: string },
	formats: Formats,
	unreviewed = 0
): string {
	const { build, reference } = names;
	if (fromNm === null || highestNm === null)
		return `Nothing that counts on ${reference} has a known torque, so nobody can say whether ${build} was ridden hard enough.`;
	const slipped = unreviewed > 0 ? 'has events that count' : 'slipped';
	const from = `${reference} ${slipped} from ${formats.number(fromNm)}\u00a0Nm on: ${build} was observed ${formats.km(aboveM)} there`;
	if (highestNm === fromNm) return `${from}.`;
	return `${from}, ${formats.km(aboveHighestM)} of it from ${formats.number(highestNm)}\u00a0Nm on, where those at the highest torque lie.`;
}
