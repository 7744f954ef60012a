/**
 * Lower edges of the bins of mean hub torque, Nm; the last bin is open upwards. Fixed for every ride and
 * build that is compared: edges chosen after the slips are known would find what one hopes for. A bin is
 * not narrower than what the torque of one event is known to (about 8 % at 90 %, so 5 Nm around 30 Nm,
 * 10 Nm around 60 Nm); finer ones would sort noise. (Common practice, no source.)
 */
export const HUB_TORQUE_EDGES_NM = [0, 5, 10, 15, 20, 25, 30, 40, 50, 60, 80] as const;

/**
 * Number of the bin that a hub torque falls into; an edge belongs to the bin above it.
 *
 * @param torqueNm mean hub torque, Nm, 0 or more
 * @returns 0 to 10; -1 for NaN: "not known" is a bin of its own and never the lowest one
 * @example hubTorqueBin(30) // 6: from 30 to 40 Nm
 */
export function hubTorqueBin(torqueNm: number): number {
	if (!(torqueNm >= 0)) return -1;
	let bin = HUB_TORQUE_EDGES_NM.length - 1;
	while (torqueNm < HUB_TORQUE_EDGES_NM[bin]) bin--;
	return bin;
}
