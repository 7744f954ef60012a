/** Below this cadence a mean over a crank turn says nothing: the torque is not known. */
export const LOWEST_CADENCE_FOR_TORQUE_RPM = 30;

/** Share of the crank's power that reaches the driver; common practice, no source. */
const DRIVETRAIN_EFFICIENCY = 0.97;

/**
 * Mean torque at the driver over a crank turn: T_crank = P / omega, T_hub = T_crank x sprocket/chainring x
 * efficiency. Power that is measured at the hub has no chain losses before it. Peaks within a turn are
 * 1.6 to 2 times the mean (common practice): never set it beside a logger's instantaneous torque.
 *
 * @param powerW power, W, 0 or more
 * @param cadenceRpm crank turns per minute
 * @param ratio chainring / sprocket = hub turns per crank turn, more than 0
 * @param powerAt where power is measured
 * @returns Nm; NaN below 30 rpm or when an argument is missing: not known, never zero
 * @example hubTorque(200, 90, 3) // 6.861: 200 W at 90 rpm is 21.22 Nm at the crank
 */
export function hubTorque(
	powerW: number,
	cadenceRpm: number,
	ratio: number,
	powerAt: 'crank' | 'hub' = 'crank'
): number {
	if (!(cadenceRpm >= LOWEST_CADENCE_FOR_TORQUE_RPM) || !(ratio > 0) || !(powerW >= 0)) return NaN;
	const crankNm = (60 * powerW) / (2 * Math.PI * cadenceRpm);
	return (crankNm / ratio) * (powerAt === 'hub' ? 1 : DRIVETRAIN_EFFICIENCY);
}
