import { checkCount, checkExposure } from './checks';
import type { SequentialPlan } from './sequentialPlan';

export interface SequentialState {
	readonly state: 'pass' | 'fail' | 'continue';
	/** if no further event comes, the plan passes at this exposure; NaN once it has failed */
	readonly passesAt: number;
	/** at this exposure the plan fails with so many events in all */
	readonly failsWith: number;
}

/**
 * Where a sequential plan stands. The events must be given as they came: a plan that once passed or failed is
 * over, and what comes later does not reopen it.
 *
 * @param plan from `sequentialPlan`
 * @param events counted so far
 * @param exposure watched so far, >= 0
 * @returns state, and what would end it
 * @throws RangeError for a broken count or exposure
 * @example sequentialState(plan, 0, 1099).state // 'pass' for the plan of 0.001 against 0.003
 * Source: Wald 1947, Sequential Analysis, chapter 3; IEC 61124.
 */
export function sequentialState(plan: SequentialPlan, events: number, exposure: number): SequentialState {
	checkCount('events', events);
	checkExposure('exposure', exposure);
	const failsWith = Math.min(
		plan.allowedAtEnd + 1,
		// rounding of the line must not ask for one event more
		Math.max(1, Math.ceil(plan.slope * exposure + plan.failIntercept - 1e-9))
	);
	const passesAt = passExposure(plan, events);
	if (events >= failsWith) return { state: 'fail', passesAt: NaN, failsWith };
	return { state: exposure >= passesAt ? 'pass' : 'continue', passesAt, failsWith };
}

/** The exposure at which the plan passes with so many events. */
export function passExposure(plan: SequentialPlan, events: number): number {
	return Math.min((events - plan.passIntercept) / plan.slope, plan.longestExposure);
}
