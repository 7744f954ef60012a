import { countedNoun } from './countedNoun';
import type { Formats } from './formats';

/** A ratio with its limits. */
export interface RatioFigures {
	/** null when there is no slip on either side, or only on the build's */
	readonly ratio: number | null;
	readonly lower: number;
	/** null = no upper limit can be given */
	readonly upper: number | null;
}

/** Slips counted, and slips expected from the reference at the same hub torque and age. */
interface SetAgainst {
	readonly ratio: RatioFigures;
	readonly expected: RatioFigures & {
		readonly counted: number;
		readonly expected: number;
		readonly comparedM: number;
		readonly notComparedM: number;
	};
}

/** The part of a comparison that its words need; the server's view fits. */
export interface ComparisonFigures {
	/** unreviewed events count as slips of the build and as none of the reference */
	readonly decides: SetAgainst;
	/** unreviewed events count as slips of both */
	readonly asFound: SetAgainst;
}

/** Names and observed distance of the two that are set against each other. */
export interface Pair {
	readonly build: string;
	readonly reference: string;
	readonly buildObservedM: number;
	readonly referenceObservedM: number;
	/** events of the reference that nobody has reviewed */
	readonly referenceUnreviewed: number;
	/** slips of it that were confirmed */
	readonly referenceConfirmed: number;
	/** events of the build that nobody has reviewed: they count as its slips */
	readonly buildUnreviewed: number;
}

/** below this share of comparable distance the comparison says too little of the build */
const LEAST_COMPARED_SHARE = 0.5;

/**
 * What the rides say about a build against its reference, in one or two sentences. The comparison at the
 * same torque and age speaks first; where too little can be compared, the bare ratio does, and says so.
 */
export function againstWords(against: ComparisonFigures, pair: Pair, formats: Formats): string {
	const { build, reference } = pair;
	const [bare] = [
		[build, pair.buildObservedM] as const,
		[reference, pair.referenceObservedM] as const
	].filter(([, observedM]) => !(observedM > 0));
	if (bare) return `Nothing was observed on ${bare[0]} yet, so the two cannot be set against each other.`;
	if (pair.referenceConfirmed === 0 && pair.referenceUnreviewed > 0)
		return `No event of ${reference} is confirmed yet: nothing can be decided before its ${formats.number(pair.referenceUnreviewed)} are reviewed. If all that was found counted on both: ${lowerFirst(answer(against.asFound, pair, formats, true))}`;
	return answer(against.decides, pair, formats, false);
}

function answer(
	{ expected, ratio }: SetAgainst,
	{ build, reference, buildUnreviewed }: Pair,
	formats: Formats,
	/** events are taken for slips that nobody has confirmed */
	assumed: boolean
): string {
	const observedM = expected.comparedM + expected.notComparedM;
	const share = observedM > 0 ? expected.comparedM / observedM : 0;
	// once nothing is certain, one condition is enough
	const open = assumed ? 0 : buildUnreviewed;
	if (share >= LEAST_COMPARED_SHARE && expected.expected > 0) {
		const conclusion = conclude(build, reference, expected, ' at the same hub torque and age', {
			assumed,
			open,
			formats
		});
		return `On the ${formats.km(expected.comparedM)} that can be compared, ${reference} would have had about ${expectedFigure(expected.expected, formats)} slips; ${expected.counted === 0 ? `none counts on ${build}` : `${formats.number(expected.counted)} ${countedNoun(expected.counted, buildUnreviewed)} ${expected.counted === 1 ? 'counts' : 'count'} on ${build}`}. ${conclusion}`;
	}
	const why =
		expected.expected === 0 && share >= LEAST_COMPARED_SHARE
			? `${reference} had no counted slip at the torque and age that ${build} was ridden at.`
			: `Only ${formats.share(share)} of the distance of ${build} was ridden at a torque and age that ${reference} knows, so the two were not ridden alike.`;
	return `${why} Per observed km alone: ${lowerFirst(conclude(build, reference, ratio, '', { assumed, open, formats }))}`;
}

function conclude(
	build: string,
	reference: string,
	{ lower, upper }: Pick<RatioFigures, 'lower' | 'upper'>,
	how: string,
	{ assumed, open, formats }: { readonly assumed: boolean; readonly open: number; readonly formats: Formats }
): string {
	const support = `The rides ${assumed ? 'would then ' : ''}support that, on these wheels,`;
	if (upper !== null && upper < 1) return `${support} ${build} slips less often than ${reference}${how}.`;
	// events that nobody has reviewed count against the build: that it is better holds all the more, that it is worse only if
	if (lower > 1 && open > 0)
		return `If the ${open === 1 ? 'event' : `${formats.number(open)} events`} of ${build} that nobody has reviewed ${open === 1 ? 'is a slip' : 'are slips'}, the rides support that, on these wheels, ${build} slips more often than ${reference}${how}.`;
	if (lower > 1) return `${support} ${build} slips more often than ${reference}${how}.`;
	return `The rides ${assumed ? 'would not' : 'do not'} show whether ${build} or ${reference} slips more often${how}: it may be either way.`;
}

/** An estimate with its own uncertainty: from ten on, tenths would promise more than it can keep. */
export function expectedFigure(expected: number, formats: Formats): string {
	return expected >= 10 ? formats.number(expected) : formats.figure(expected);
}

function lowerFirst(sentence: string): string {
	return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

/** "0.14 (0.02 to 0.6)"; without any slip: "at most 0.6"; "no limit" where none can be given. */
export function limitsWords({ ratio, lower, upper }: RatioFigures, formats: Formats): string {
	if (upper === null) return lower > 0 ? `at least ${formats.figure(lower)}` : 'cannot be said';
	if (ratio === null || ratio === 0) return `at most ${formats.figure(upper)}`;
	return `${formats.figure(ratio)} (${formats.figure(lower)} to ${formats.figure(upper)})`;
}
