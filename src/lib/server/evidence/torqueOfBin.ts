import { HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';

/**
 * The torque that stands for a bin where a number is needed: its middle; of the open one its lower edge, which
 * is the least that can be said.
 *
 * @param torqueBin number of the bin, 0 to 9
 * @returns Nm
 * @example torqueOfBin(7) // 35
 */
export function torqueOfBin(torqueBin: number): number {
	const from = HUB_TORQUE_EDGES_NM[torqueBin];
	return (from + (HUB_TORQUE_EDGES_NM[torqueBin + 1] ?? from)) / 2;
}
