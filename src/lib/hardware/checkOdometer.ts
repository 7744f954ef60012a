import { distanceReached } from './distanceReached';
import type { DistancePiece } from './wheelAxis';

export interface OdometerReading {
	readonly id: number;
	/** milliseconds since 1970 UTC */
	readonly atMs: number;
	/** what the counter showed, metres */
	readonly readingM: number;
}

export interface OdometerCheck {
	readonly id: number;
	/** metres of the ledger up to this reading */
	readonly ledgerM: number;
	/** since the reading before; null at the first one and after a counter went back */
	readonly since: {
		readonly countedM: number;
		readonly ledgerM: number;
		/** counter - ledger, metres: above 0 something was ridden that the ledger does not know */
		readonly differenceM: number;
		readonly toleranceM: number;
	} | null;
	readonly verdict:
		'first reading' | 'agrees' | 'more than the ledger' | 'less than the ledger' | 'went back';
}

/** Share and least value of the difference that nobody needs to look at (common practice, no source). */
export const ODOMETER_TOLERANCE = { share: 0.03, leastM: 2000 } as const;

/**
 * Holds odometer readings against the distance of the ledger, from each reading to the next. They check and
 * never drive: no distance anywhere is taken from them. A counter that shows less than before was reset or
 * changed; from there on it is a first reading again.
 *
 * @param readings of one wheel, in any order
 * @param pieces what the wheel was ridden, in the order of `wheelAxis`
 * @returns one check a reading, in order of time
 */
export function checkOdometer(
	readings: readonly OdometerReading[],
	pieces: readonly DistancePiece[]
): OdometerCheck[] {
	const inOrder = [...readings].sort((a, b) => a.atMs - b.atMs || a.readingM - b.readingM || a.id - b.id);
	let before: { readingM: number; ledgerM: number } | null = null;
	return inOrder.map(({ id, atMs, readingM }) => {
		const ledgerM = distanceReached(pieces, atMs);
		const last = before;
		before = { readingM, ledgerM };
		if (!last) return { id, ledgerM, since: null, verdict: 'first reading' };
		if (readingM < last.readingM) return { id, ledgerM, since: null, verdict: 'went back' };
		const since = { countedM: readingM - last.readingM, ledgerM: ledgerM - last.ledgerM };
		const differenceM = since.countedM - since.ledgerM;
		const toleranceM = Math.max(ODOMETER_TOLERANCE.leastM, ODOMETER_TOLERANCE.share * since.countedM);
		const agrees = Math.abs(differenceM) <= toleranceM;
		const verdict = agrees ? 'agrees' : differenceM > 0 ? 'more than the ledger' : 'less than the ledger';
		return { id, ledgerM, since: { ...since, differenceM, toleranceM }, verdict };
	});
}
