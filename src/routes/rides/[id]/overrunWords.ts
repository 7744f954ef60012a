import type { EventView, RideView } from '$lib/server/views';
import { overrunSteps } from '$lib/slip/overrunSteps';
import type { Formats } from '$lib/ui/formats';

/** The overrun in hub degrees with its limits, the gear, and how many engagement steps that may be. */
export function overrunWords(
	event: EventView,
	ride: Pick<RideView, 'stepHubDeg'>,
	formats: Pick<Formats, 'number'>
): string {
	const { value, lower, upper } = event.overrunCrankDeg;
	const ratio = event.overrunHubDeg / value;
	const hub = `${formats.number(event.overrunHubDeg)} hub degrees`;
	const limits = `(${formats.number(lower * ratio)} to ${formats.number(upper * ratio)})`;
	const gear = event.gear ? ` in ${event.gear}` : '';
	const steps = overrunSteps(event.overrunCrankDeg, ratio, ride.stepHubDeg);
	if (!steps) return `${hub} ${limits}${gear}`;
	const digits = stepDigits(steps.value);
	const number = (count: number) => formats.number(count, digits);
	return `${hub} ${limits}${gear}, about ${number(steps.value)} engagement steps (${number(steps.lower)} to ${number(steps.upper)})`;
}

/** "20 steps", "2.4 steps": an estimate whose limits lie a third apart has no tenths beyond a few steps. */
export function stepsWords(steps: number, formats: Pick<Formats, 'number'>): string {
	return `${formats.number(steps, stepDigits(steps))}\u00a0steps`;
}

function stepDigits(steps: number): number {
	return steps < 3 ? 1 : 0;
}
