/**
 * Development: metres per crank turn = chainring / sprocket x wheel circumference.
 *
 * @param chainring teeth, more than 0
 * @param sprocket teeth, more than 0
 * @param circumferenceM rolled circumference of the driven wheel, m
 * @returns metres; NaN when an argument is missing
 * @example development(48, 17, 2.14) // 6.042
 */
export function development(chainring: number, sprocket: number, circumferenceM: number): number {
	return chainring > 0 && sprocket > 0 ? (chainring / sprocket) * circumferenceM : NaN;
}
