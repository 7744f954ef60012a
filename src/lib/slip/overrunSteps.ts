import type { WithLimits } from './analysis';

/**
 * Overrun in engagement steps: hub degrees over the degrees of one step. Not rounded: a clutch catches only at whole
 * steps, but the size is an estimate, and its limits say how many steps it may have been.
 *
 * @param overrunCrankDeg overrun with its limits, crank degrees
 * @param hubDegPerCrankDeg ratio of the gear that was in, hub turns per crank turn
 * @param stepHubDeg hub degrees of one step, 360 / points of engagement; null = the build does not say
 * @returns steps with the same limits; null where step or ratio is not known
 * @example overrunSteps({ value: 90, lower: 60, upper: 120 }, 2, 15) // { value: 12, lower: 8, upper: 16 }
 */
export function overrunSteps(
	overrunCrankDeg: WithLimits,
	hubDegPerCrankDeg: number,
	stepHubDeg: number | null
): WithLimits | null {
	if (stepHubDeg === null || !(stepHubDeg > 0) || !(hubDegPerCrankDeg > 0)) return null;
	const steps = (crankDeg: number) => (crankDeg * hubDegPerCrankDeg) / stepHubDeg;
	const { value, lower, upper } = overrunCrankDeg;
	return { value: steps(value), lower: steps(lower), upper: steps(upper) };
}
