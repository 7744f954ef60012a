/** the open bin is drawn this wide, Nm */
const OPEN_BIN_NM = 15;

/**
 * The steps of a curve over torque bins: those without a value are left out, and the open bin gets an end.
 *
 * @param points bins in order, `neverFalling` null where nothing was ridden
 * @example risingSteps([{ fromNm: 60, toNm: null, neverFalling: 2 }]) // [{ fromNm: 60, toNm: 75, value: 2 }]
 */
export function risingSteps(
	points: readonly {
		readonly fromNm: number;
		readonly toNm: number | null;
		readonly neverFalling: number | null;
	}[]
): { fromNm: number; toNm: number; value: number }[] {
	return points.flatMap(({ fromNm, toNm, neverFalling }) =>
		neverFalling === null ? [] : [{ fromNm, toNm: toNm ?? fromNm + OPEN_BIN_NM, value: neverFalling }]
	);
}
