/** A place in a drawing to a tenth of a pixel: no eye tells more, and pictures stay short. */
export function toTenth(value: number): number {
	return Math.round(value * 10) / 10;
}
