import type { Formats } from './formats';

/** Slips felt against slips found, of one build; the server's view fits. */
export interface FeltFigures {
	readonly rides: number;
	readonly observedM: number;
	readonly both: number;
	readonly markOnly: number;
	readonly detectionOnly: number;
	readonly waiting: number;
	readonly seen: number;
	readonly total: number | null;
	readonly lower: number | null;
	readonly upper: number | null;
	readonly confidence: number;
	readonly fewOnBoth: boolean;
}

/** What riders' laps and the tool's findings say together, one sentence a point. */
export function feltWords(felt: FeltFigures | null, formats: Formats): string[] {
	if (felt === null)
		return [
			'No observed ride of it comes from a rider who said that laps mean slips: what was felt cannot be set against what was found.'
		];
	const { both, markOnly, detectionOnly } = felt;
	const some = (count: number) => (count === 0 ? 'none' : formats.number(count));
	const rides = felt.rides === 1 ? 'one ride' : `${formats.number(felt.rides)} rides`;
	if (felt.seen === 0 && felt.waiting > 0)
		return [
			`On ${formats.km(felt.observedM)} observed of ${rides} whose laps mean slips nothing is decided yet: ${formats.number(felt.waiting)} ${felt.waiting === 1 ? 'lap or event waits' : 'laps or events wait'} for an answer or a review.`
		];
	// where nothing is on either list four times "none" says less than one sentence
	if (felt.seen === 0)
		return [
			`On ${formats.km(felt.observedM)} observed of ${rides} whose laps mean slips nothing was marked as a slip and nothing confirmed: the two lists say nothing about what both missed.`
		];
	const counts = `On ${formats.km(felt.observedM)} observed of ${rides} whose laps mean slips: marked and found ${some(both)}, marked only ${some(markOnly)}, found and confirmed only ${some(detectionOnly)}.`;
	return [counts, ...estimate(felt, formats), ...waiting(felt, formats)];
}

function estimate(felt: FeltFigures, formats: Formats): string[] {
	if (felt.total === null || felt.lower === null)
		return ['No slip is on both lists, so they say nothing about how many both missed.'];
	const upper = felt.upper === null ? 'no upper limit' : formats.number(felt.upper);
	const few = felt.fewOnBoth
		? ' Fewer than 7 are on both lists: the figure leans on chance and is no more than a hint.'
		: '';
	return [
		`That speaks for at least ${formats.number(felt.total)} slips in all (${formats.share(felt.confidence)} limits ${formats.number(felt.lower)} to ${upper}). It is a lower bound: what a rider feels is large, and what is large is also found more easily.${few}`
	];
}

function waiting({ waiting: count }: FeltFigures, formats: Formats): string[] {
	return count === 0
		? []
		: [
				`${formats.number(count)} ${count === 1 ? 'lap or event waits' : 'laps or events wait'} for an answer or a review there; the figures may still move.`
			];
}
