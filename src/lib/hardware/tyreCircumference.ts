/** A tyre size as ISO 5775-1 designates it. */
export interface TyreSize {
	/** nominal section width, mm */
	readonly widthMm: number;
	/** nominal rim (bead seat) diameter, mm */
	readonly rimMm: number;
}

/**
 * Reads a tyre designation by ISO 5775-1: section width and rim diameter in millimetres.
 *
 * @param designation "40-622"; spaces and other dashes are taken as well
 * @returns null when it is no such designation, or none of a bicycle (width 18 to 130, rim 150 to 700 mm)
 * @example readTyreSize('40-622') // { widthMm: 40, rimMm: 622 }
 */
export function readTyreSize(designation: string): TyreSize | null {
	const match = /^(\d{2,3})\s*[-‐‑–]\s*(\d{3})$/.exec(designation.trim());
	if (!match) return null;
	const [widthMm, rimMm] = [Number(match[1]), Number(match[2])];
	const plausible = widthMm >= 18 && widthMm <= 130 && rimMm >= 150 && rimMm <= 700;
	return plausible ? { widthMm, rimMm } : null;
}

/**
 * Circumference of a tyre from its size: a start value, as if the tyre were as high as it is wide and did
 * not give under load. Printed tables lie within 2 % of it and as far from each other; a rolled
 * measurement under load is better.
 *
 * @param designation by ISO 5775-1, e.g. "40-622"
 * @returns metres; NaN when the designation cannot be read
 * @example tyreCircumferenceM('28-622') // 2.130
 * Source: pi x (rim diameter + 2 x width), common practice; checked in tests/published.
 */
export function tyreCircumferenceM(designation: string): number {
	const size = readTyreSize(designation);
	return size ? (Math.PI * (size.rimMm + 2 * size.widthMm)) / 1000 : NaN;
}
