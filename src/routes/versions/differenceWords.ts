import type { EventBrief, EventDifference } from '$lib/server';
import type { Formats } from '$lib/ui/formats';
import { strengthWords } from '$lib/ui/strengthWords';

/** One difference in words, and where the event stands. */
export interface DifferenceWords {
	/** "new", "gone" or "changed" */
	readonly what: 'new' | 'gone' | 'changed';
	/** time in the ride */
	readonly at: string;
	readonly sentence: string;
}

/**
 * What became of one event between two versions of the analysis, as a sentence.
 *
 * @example "Slip, 120 crank degrees, confirmed: not reported any more."
 */
export function differenceWords(
	{ what, changes, before, after }: EventDifference,
	formats: Formats
): DifferenceWords {
	const told = (before ?? after)!;
	const at = formats.clock(told.startS);
	const who = `${capital(told.kind)}, ${formats.number(told.crankDeg)} crank degrees, ${told.verdict ?? 'not reviewed'}`;
	if (what === 'vanished') return { what: 'gone', at, sentence: `${who}: not reported any more.` };
	if (what === 'appeared' || !before || !after)
		return { what: 'new', at, sentence: `${who}, signs ${word(told, formats)}; ${rate(told)}.` };
	const parts: Record<(typeof changes)[number], string> = {
		start: laterWords(after.startS - before.startS, formats),
		kind: `now called ${after.kind}`,
		size: `${formats.number(after.crankDeg)} instead of ${formats.number(before.crankDeg)} crank degrees, beyond its limits`,
		strength: `signs ${word(after, formats)} instead of ${word(before, formats)}`,
		rate: after.inRate ? 'now in the rate' : 'no longer in the rate'
	};
	return { what: 'changed', at, sentence: `${who}: ${changes.map((change) => parts[change]).join('; ')}.` };
}

function laterWords(seconds: number, formats: Formats): string {
	return `begins ${formats.number(Math.abs(seconds), 1)}\u00a0s ${seconds < 0 ? 'earlier' : 'later'}`;
}

function word(event: EventBrief, formats: Formats): string {
	return strengthWords(event.strength, formats).word;
}

function rate(event: EventBrief): string {
	return event.inRate ? 'counts in the rate until it is rejected' : 'apart from the rate';
}

function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
