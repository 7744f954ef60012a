import type { Formats } from './formats';

/** Failed pick-ups of a build; the server's view fits. */
export interface PickUpFigures {
	readonly failed: number;
	readonly pickUps: number;
	readonly perThousand: number | null;
	readonly lower: number;
	readonly upper: number | null;
	readonly confidence: number;
}

/** How often picking up the drive failed, in a sentence; never "none will fail". */
export function pickUpWords(rate: PickUpFigures, formats: Formats): string {
	const { failed, perThousand, lower, upper, confidence } = rate;
	if (perThousand === null || upper === null) return 'No pick-up after coasting was observed.';
	const where = `${formats.number(rate.pickUps)} observed pick-ups after coasting`;
	if (failed === 0)
		return `None of ${where} is found failed: at most ${formats.figure(upper)} per 1000 (upper ${formats.share(confidence)} limit).`;
	return `${formats.number(failed)} of ${where} failed: ${formats.figure(perThousand)} per 1000 (${formats.figure(lower)} to ${formats.figure(upper)}). Look at spring, pawls and grease: a hint, no proof.`;
}
