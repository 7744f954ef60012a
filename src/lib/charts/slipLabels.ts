import { glyphSize } from './glyphSize';
import type { SlipMark } from './strip';
import { toTenth } from './toTenth';

/** The words beside a slip's sign. */
export interface SlipLabel {
	readonly slip: SlipMark;
	readonly text: string;
	/** where the words begin, pixels */
	readonly x: number;
}

/** room of one letter, pixels */
const LETTER = 7;
/** between words and whatever follows them, pixels */
const GAP = 4;

/**
 * Words for the signs above a strip, none over another sign or another's words: the number with its size where there
 * is room up to the next sign, else the number alone, else nothing. The chosen slip always keeps its number.
 *
 * @param labelled slips that are named, by their start; @param shown all whose signs are drawn
 * @param placeOf pixels of a second of the ride; @param right where the drawing ends, pixels
 * @param words the longest first
 */
export function slipLabels(
	labelled: readonly SlipMark[],
	shown: readonly SlipMark[],
	{ placeOf, right }: { placeOf: (timeS: number) => number; right: number },
	words: (slip: SlipMark) => readonly string[],
	selectedId: number | null
): SlipLabel[] {
	const signs = shown.map((slip) => {
		const x = placeOf(slip.startS);
		return { slip, x, from: x - glyphSize(slip.overrunCrankDeg) - GAP };
	});
	let last = -Infinity;
	return labelled.flatMap((slip) => {
		const at = placeOf(slip.startS);
		const from = toTenth(at + glyphSize(slip.overrunCrankDeg) + 3);
		const next = Math.min(
			...signs.filter((sign) => sign.slip.id !== slip.id && sign.x >= at).map((sign) => sign.from),
			Infinity
		);
		const chosen = slip.id === selectedId;
		const choices = words(slip);
		const text =
			choices.find((words) => from >= last && from + LETTER * words.length <= next) ??
			(chosen ? choices.at(-1) : undefined);
		if (text === undefined) return [];
		last = from + LETTER * text.length + GAP;
		// at the right end there is no room for it
		return [{ slip, text, x: Math.min(from, right - 6 * text.length) }];
	});
}
