/** Cadence that a fan shows at least and, where no slip asks for more, at most, rpm. */
const LEAST_RPM = 100;
const USUAL_RPM = 160;
/** Room above the fastest slip, as a factor: its sign and ring stand clear of the names of gears above the drawing. */
const ROOM = 1.06;

/**
 * End of the cadence axis of a gear fan: that of the ride's usual riding, and further where a slip needs it, so that
 * no slip stands outside or over the names of gears.
 *
 * @param usualRpm cadence that the ride hardly exceeds
 * @param slips shown as marks, seconds
 * @param cadenceRpm one value a second, NaN = not known
 * @returns rpm; beyond the usual in whole tens
 */
export function fanTop(
	usualRpm: number,
	slips: readonly { readonly startS: number; readonly endS: number }[],
	cadenceRpm: Float32Array
): number {
	let top = Math.min(USUAL_RPM, Math.max(LEAST_RPM, usualRpm));
	for (const { startS, endS } of slips) {
		for (let s = Math.max(0, Math.round(startS)); s <= endS && s < cadenceRpm.length; s++)
			if (ROOM * cadenceRpm[s] > top) top = 10 * Math.ceil((ROOM * cadenceRpm[s]) / 10);
	}
	return top;
}
