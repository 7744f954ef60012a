/**
 * Lower edges of the bins of mean hub torque, Nm; the last bin is open upwards. Fixed for every ride and
 * build that is compared: edges chosen after the slips are known would find what one hopes for. Narrow
 * where the kilometres are (nine tenths of those of the example workshop lie below 20 Nm), wide where they
 * are few. The torque of one event is known to about 17 % to either side (90 % limits), so an event near an edge may
 * belong to the bin beside it. (Common practice, no source.)
 */
export const HUB_TORQUE_EDGES_NM = [0, 4, 8, 12, 16, 20, 25, 30, 40, 60] as const;

/**
 * Number of the bin that a hub torque falls into; an edge belongs to the bin above it.
 *
 * @param torqueNm mean hub torque, Nm, 0 or more
 * @returns 0 to 9; -1 for NaN: "not known" is a bin of its own and never the lowest one
 * @example hubTorqueBin(30) // 7: from 30 to 40 Nm
 */
export function hubTorqueBin(torqueNm: number): number {
	if (!(torqueNm >= 0)) return -1;
	let bin = HUB_TORQUE_EDGES_NM.length - 1;
	while (torqueNm < HUB_TORQUE_EDGES_NM[bin]) bin--;
	return bin;
}
