/**
 * Cadence at which crank and wheel turn together: n = 60 v / D.
 *
 * @param speedMps wheel speed, m/s
 * @param developmentM metres per crank turn, more than 0
 * @returns rpm; NaN when an argument is missing
 * @example engagedCadence(9, 6) // 90
 */
export function engagedCadence(speedMps: number, developmentM: number): number {
	return developmentM > 0 ? (60 * speedMps) / developmentM : NaN;
}
