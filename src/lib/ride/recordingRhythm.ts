import type { Span } from './ride';

/** a device that leaves out samples steps this far at most; longer is a gap (common practice, no source) */
const LONGEST_SKIP_S = 15;
/** so many of the steps must be longer than usual before the recording counts as irregular */
const IRREGULAR_SHARE = 0.1;
/** a stop or start event and its record may be this far apart */
const EVENT_SLACK_S = 2;

/**
 * Tells gaps from pauses and from a device that leaves out samples.
 * @param timeS seconds from the first record, strictly increasing
 * @param pauses stretches in which the recording was stopped, sorted and apart from each other
 * @returns gaps: stretches without records that no pause explains; irregular: steps of 2 s and more
 * (or of twice a logger's step) are usual
 */
export function recordingRhythm(
	timeS: Float64Array,
	pauses: readonly Span[]
): { gaps: Span[]; irregular: boolean } {
	const usualS = usualStep(timeS);
	let short = 0;
	let skipping = 0;
	for (let i = 1; i < timeS.length; i++) {
		const step = timeS[i] - timeS[i - 1];
		if (step > LONGEST_SKIP_S) continue;
		short++;
		if (step > 1.5 * usualS) skipping++;
	}
	const irregular = usualS >= 1.5 || (short > 0 && skipping / short > IRREGULAR_SHARE);
	const longestS = irregular ? Math.max(LONGEST_SKIP_S, 3 * usualS) : Math.max(2.5 * usualS, 0.1);
	const gaps: Span[] = [];
	let first = 0;
	for (let i = 1; i < timeS.length; i++) {
		const span: Span = [timeS[i - 1], timeS[i]];
		if (span[1] - span[0] <= longestS) continue;
		while (first < pauses.length && pauses[first][1] + EVENT_SLACK_S < span[0]) first++;
		if (unexplained(span, pauses, first) > longestS) gaps.push(span);
	}
	return { gaps, irregular };
}

/** the lower quartile of the steps: a device that leaves out samples still has its own beat */
function usualStep(timeS: Float64Array): number {
	const steps = new Float64Array(Math.max(0, timeS.length - 1));
	for (let i = 0; i < steps.length; i++) steps[i] = timeS[i + 1] - timeS[i];
	steps.sort();
	return steps.length === 0 ? 1 : steps[Math.floor(steps.length / 4)];
}

/** seconds of the span that lie in no pause, from the pause with number `first` on */
function unexplained(span: Span, pauses: readonly Span[], first: number): number {
	let seconds = span[1] - span[0];
	for (let i = first; i < pauses.length && pauses[i][0] - EVENT_SLACK_S <= span[1]; i++) {
		const overlap =
			Math.min(span[1], pauses[i][1] + EVENT_SLACK_S) - Math.max(span[0], pauses[i][0] - EVENT_SLACK_S);
		if (overlap > 0) seconds -= overlap;
	}
	return seconds;
}
