import type { BuildRow } from '../views';

interface Ratio {
	readonly ratio: number | null;
	readonly lower: number;
	readonly upper: number | null;
	readonly confidence: number;
}

/**
 * What the rides say about how often a build slips against another, in plain words with what was counted.
 *
 * @param ratios `decides`: unreviewed events count as slips of the build and as none of the reference;
 *   `asFound`: they count as slips of both; `best`: as none of the build and as slips of the reference
 */
export function ratioSentence(
	build: BuildRow,
	reference: BuildRow,
	ratios: { readonly decides: Ratio; readonly asFound: Ratio; readonly best: Ratio }
): string {
	const { name } = build;
	const other = reference.name;
	for (const row of [build, reference])
		if (row.observedM === 0)
			return `Nothing was observed on ${row.name} yet, so the two cannot be set against each other.`;
	const unreviewed = reference.counted.unreviewed;
	const asFound =
		unreviewed > 0 ? ` If all that was found counts on both: ${sizeOf(name, other, ratios.asFound)}` : '';
	const best =
		unreviewed + build.counted.unreviewed > 0
			? ` At best for ${name}, with only what is confirmed on it and all that was found on ${other}: ${sizeOf(name, other, ratios.best)}`
			: '';
	const finding =
		unreviewed > 0 && reference.counted.confirmed === 0
			? `No event of ${other} is confirmed yet: nothing can be decided before its ${unreviewed} are reviewed.`
			: `${sizeOf(name, other, ratios.decides)}${conclusionOf(name, ratios.decides)}${countingPolicy(build, reference)}`;
	return `${finding}${asFound}${best} Slips are taken to come singly and hub torque is not yet matched.`;
}

function sizeOf(name: string, other: string, { ratio, lower, upper, confidence }: Ratio): string {
	const level = `${Math.round(confidence * 100)} %`;
	const upTo = upper === null ? 'no upper limit can be given' : `at most ${figure(upper)} times`;
	if (ratio === null && lower === 0 && upper === null)
		return `Neither ${name} nor ${other} has a counted slip: the rides do not say which is better.`;
	if (ratio === null)
		return `${other} has no counted slip, ${name} has: at least ${figure(lower)} times as often per observed km (${level} limits).`;
	const span = upper === null ? `from ${figure(lower)} up, ${upTo}` : `${figure(lower)} to ${figure(upper)}`;
	return ratio === 0
		? `${name} has no counted slip: ${upTo} as often as ${other} per observed km (${level} limits).`
		: `${name} slips ${figure(ratio)} times as often as ${other} per observed km (${level} limits: ${span}).`;
}

function conclusionOf(name: string, { ratio, lower, upper }: Ratio): string {
	if (ratio === null) return '';
	if (upper !== null && upper < 1) return ` The rides support that ${name} slips less often.`;
	if (lower > 1) return ` The rides support that ${name} slips more often.`;
	return ' The rides do not show a difference: it may be either way.';
}

function countingPolicy(build: BuildRow, reference: BuildRow): string {
	const parts: string[] = [];
	if (build.counted.unreviewed > 0)
		parts.push(`${build.counted.unreviewed} unreviewed count as slips of ${build.name}`);
	if (reference.counted.unreviewed > 0)
		parts.push(`${reference.counted.unreviewed} unreviewed count as none of ${reference.name}`);
	return parts.length > 0 ? ` Until reviewed, ${parts.join(' and ')}.` : '';
}

/** Two digits that matter; more would pretend a precision that the limits deny. */
function figure(value: number): string {
	return String(Number(value.toPrecision(2)));
}
