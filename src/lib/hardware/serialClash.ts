import { sameText } from './bill';

/** A part that bears a serial, on a wheel from <= instant < until. */
export interface SerialOnWheel {
	readonly periodId: number;
	readonly buildId: number;
	readonly wheelId: number;
	/** part number: two parts of different numbers may bear the same serial */
	readonly number: string;
	readonly serial: string;
	/** milliseconds since 1970 UTC */
	readonly fromMs: number;
	/** null = still fitted */
	readonly untilMs: number | null;
}

/**
 * One piece cannot be in two hubs at the same time: finds two fitted periods that share a serial and
 * overlap. Periods that only touch do not overlap, since from <= instant < until.
 *
 * @param pieces every piece with a serial and when it was fitted, in any order
 * @param buildId only clashes that this build has a part in
 * @returns the first clash in order of time, with the piece of this build first; null when there is none
 * @example the same ring in two builds: one on wheel 1 from 0 to 10, the other on wheel 2 from 9 on: a clash
 * Source: common practice, no source.
 */
export function serialClash(
	pieces: readonly SerialOnWheel[],
	buildId: number
): [SerialOnWheel, SerialOnWheel] | null {
	const inOrder = [...pieces].sort((a, b) => a.fromMs - b.fromMs || a.periodId - b.periodId);
	for (const mine of inOrder) {
		if (mine.buildId !== buildId) continue;
		const other = inOrder.find(
			(piece) =>
				piece.periodId !== mine.periodId &&
				sameText(piece.number, mine.number) &&
				sameText(piece.serial, mine.serial) &&
				piece.fromMs < (mine.untilMs ?? Infinity) &&
				mine.fromMs < (piece.untilMs ?? Infinity)
		);
		if (other) return [mine, other];
	}
	return null;
}
