import type { FittedPeriod } from './buildOfRide';

/**
 * The build that distance without a recording belongs to. It was ridden up to its instant, so at the very
 * instant of a change it belongs to the build that came off.
 *
 * @param wheelId the wheel that was ridden
 * @param atMs instant by which it was ridden, milliseconds since 1970 UTC
 * @param periods fitted periods without overlaps, in any order; those of other wheels are ignored
 * @returns id of the build; null when none was fitted
 * @example buildAtInstant(1, 5, [{ id: 1, wheelId: 1, buildId: 7, fromMs: 0, untilMs: 5 }]) // 7
 */
export function buildAtInstant(
	wheelId: number,
	atMs: number,
	periods: readonly FittedPeriod[]
): number | null {
	const period = periods.find(
		(one) => one.wheelId === wheelId && one.fromMs < atMs && (one.untilMs === null || atMs <= one.untilMs)
	);
	return period?.buildId ?? null;
}
