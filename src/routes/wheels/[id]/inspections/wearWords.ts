import type { WearView } from '$lib/server';
import type { Formats } from '$lib/ui/formats';

/** What the measurements of one place say, in plain sentences: the wear, the limit, and what they cannot say. */
export function wearWords(wear: WearView, formats: Formats): string[] {
	const sentences = [lineSentence(wear, formats), limitSentence(wear, formats)];
	const early = wear.points.filter(({ beforeRunIn }) => beforeRunIn).length;
	if (early > 0)
		sentences.push(
			`${formats.number(early)} measured before the run-in of ${formats.kmSet(wear.runInM)} ${early === 1 ? 'is' : 'are'} shown and not part of the line.`
		);
	if (wear.withoutDistance > 0)
		sentences.push(`${formats.number(wear.withoutDistance)} could not be placed: the distance is not known.`);
	return sentences.filter((sentence) => sentence !== null);
}

function lineSentence(wear: WearView, formats: Formats): string {
	const { line, unit, fewestPoints } = wear;
	const after = wear.points.filter(({ beforeRunIn }) => !beforeRunIn).length;
	if (line === null)
		return after < fewestPoints
			? `${formats.number(after)} of at least ${formats.number(fewestPoints)} inspections after the run-in: no line is drawn through fewer.`
			: 'All were measured at one distance: no line can be told.';
	const limits = `${formats.figure(line.slopeLowerPerThousandKm)} to ${formats.figure(line.slopeUpperPerThousandKm)}`;
	return `It changes by ${amount(line.slopePerThousandKm, unit, formats)} per 1000 km (${formats.share(line.confidence)} limits ${limits}), by a straight line through ${formats.number(line.points)} inspections; the band is where one further measurement is expected (${formats.share(line.confidence)}). It knows nothing of a bend further out.`;
}

function limitSentence(wear: WearView, formats: Formats): string | null {
	const { limit, limitReached: reached, reachedM, unit } = wear;
	if (limit === null) return 'No wear limit was written down with it; the maker may give one.';
	const value = `${limit.is === 'lowest' ? 'at least' : 'at most'} ${amount(limit.value, unit, formats)}`;
	if (wear.beyondLimit) return `The newest measurement lies beyond the limit (${value}): not ridden on.`;
	if (reached === null) return `The limit is ${value}; how far it is cannot be told yet.`;
	const confidence = formats.share(reached.confidence);
	if (reached.kind === 'between')
		return `The line reaches the limit (${value}) at ${formats.km(reached.atM!)}, ${formats.km(reached.lowerM!)} to ${formats.km(reached.upperM!)} (${confidence}); ${reached.atM! > reachedM ? `${formats.km(reached.atM! - reachedM)} from now` : 'that distance is already ridden'}.`;
	if (reached.kind === 'open' && reached.lowerM !== null)
		return `The limit (${value}) is not reached before ${formats.km(reached.lowerM)} (${confidence}); a latest distance cannot be given, the measurements do not establish that it wears towards it.`;
	if (reached.kind === 'away')
		return `By the line it moves away from its limit (${value}): look at how it was measured, parts do not grow.`;
	return `When the limit (${value}) is reached cannot be told from these measurements: the distance is unbounded (${confidence}).`;
}

export function amount(value: number, unit: string, formats: Formats): string {
	return `${formats.figure(value)}\u00a0${unit}`;
}
