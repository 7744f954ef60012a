/** Something that a wheel was ridden: a recorded ride, or distance without a recording. */
export interface DistancePiece {
	readonly kind: 'ride' | 'unlogged';
	readonly id: number;
	/** milliseconds since 1970 UTC; of unlogged distance both are the instant by which it was ridden */
	readonly startMs: number;
	readonly endMs: number;
	/** metres, >= 0 */
	readonly distanceM: number;
	/** the build that it belongs to; null = not known, or none was fitted */
	readonly buildId: number | null;
}

/** A piece in its place on the distance axis of the wheel, metres. */
export type AxisPiece<Piece extends DistancePiece = DistancePiece> = Piece & {
	readonly fromM: number;
	readonly toM: number;
};

/**
 * Lays what a wheel was ridden end to end, in order of time: the distance axis of the wheel. It follows
 * from the pieces alone. Pieces of the same instants are put in order by what they are, not by when they
 * were written down, so that late uploads and corrections in any order end in the same sums, to the last
 * digit.
 *
 * @param pieces those that count, in any order, each once
 * @returns the pieces in order; the last `toM` is the distance of the wheel
 * @throws RangeError for a negative or unknown distance, and for a piece that ends before it starts
 * @example wheelAxis([{ kind: 'unlogged', id: 1, startMs: 9, endMs: 9, distanceM: 50, buildId: null }])
 *   // [{ ..., fromM: 0, toM: 50 }]
 * Source: common practice, no source.
 */
export function wheelAxis<Piece extends DistancePiece>(pieces: readonly Piece[]): AxisPiece<Piece>[] {
	const inOrder = [...pieces].sort(
		(a, b) =>
			a.startMs - b.startMs ||
			a.endMs - b.endMs ||
			a.distanceM - b.distanceM ||
			a.kind.localeCompare(b.kind) ||
			a.id - b.id
	);
	let reachedM = 0;
	return inOrder.map((piece) => {
		if (!(piece.distanceM >= 0 && piece.distanceM < Infinity))
			throw new RangeError(`distanceM of ${piece.kind} ${piece.id}: ${piece.distanceM}`);
		if (!(piece.endMs >= piece.startMs))
			throw new RangeError(`endMs of ${piece.kind} ${piece.id} is before its start`);
		const fromM = reachedM;
		reachedM += piece.distanceM;
		return { ...piece, fromM, toM: reachedM };
	});
}
