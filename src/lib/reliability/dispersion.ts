import { unitTotals, type UnitCount } from './unitCounts';

/**
 * How far the counts of units scatter beyond events that come singly: Pearson's chi-square over its degrees of
 * freedom. 1: single events; 3: limits must be about 1.7 times wider. Below 1 it is chance and narrows nothing.
 *
 * @param units counts and exposures of outings; units without exposure are left out
 * @returns dispersion, >= 0; NaN when it cannot be told (no event, or fewer than two units)
 * @throws RangeError for broken counts or exposures
 * @example dispersion([{ count: 0, exposure: 40 }, { count: 6, exposure: 40 }]) // 6
 * Source: McCullagh and Nelder 1989, Generalized Linear Models, 2nd ed., section 4.5 and 6.2.4.
 */
export function dispersion(units: readonly UnitCount[]): number {
	const { count, unitCount, rate } = unitTotals(units);
	if (count === 0 || unitCount < 2) return NaN;
	let chiSquare = 0;
	for (const unit of units)
		if (unit.exposure > 0) chiSquare += (unit.count - rate * unit.exposure) ** 2 / (rate * unit.exposure);
	return chiSquare / (unitCount - 1);
}
