import { checkCount, checkExposure } from './checks';

/** One unit of watching (say, one outing, one run): its events and what was watched. */
export interface UnitCount {
	readonly count: number;
	readonly exposure: number;
}

/** Sums over units. */
export interface UnitTotals {
	readonly count: number;
	readonly exposure: number;
	/** units with an exposure above 0: the others tell nothing */
	readonly unitCount: number;
	/** count / exposure; NaN without exposure */
	readonly rate: number;
}

/**
 * Sums counts and exposures over units, refusing what is neither.
 *
 * @param units any number; a unit without exposure must have no event
 * @returns the sums; rate NaN without exposure
 * @throws RangeError for broken counts or exposures, or events without exposure
 * @example unitTotals([{ count: 1, exposure: 30 }, { count: 0, exposure: 50 }]).rate // 0.0125
 * Source: definition.
 */
export function unitTotals(units: readonly UnitCount[]): UnitTotals {
	let [count, exposure, unitCount] = [0, 0, 0];
	for (const unit of units) {
		checkCount('count', unit.count);
		checkExposure('exposure', unit.exposure);
		if (unit.exposure === 0 && unit.count > 0)
			throw new RangeError(`count must be 0 where exposure is 0; it is ${unit.count}`);
		count += unit.count;
		exposure += unit.exposure;
		if (unit.exposure > 0) unitCount++;
	}
	return { count, exposure, unitCount, rate: exposure > 0 ? count / exposure : NaN };
}
