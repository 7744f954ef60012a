import type { SecondGrid } from './secondGrid';

/** Lags that devices were seen to have against cadence, s. */
const LAGS_S = [0, 1, -1, 2, -2];

/** Pedalling, by cadence alone: slower turns are mostly positioning the cranks. */
const PEDALLING_RPM = 40;
/** Slower than this the proportion says little. */
const ROLLING_MPS = 2;

/**
 * Constant lag of speed behind cadence in this file: the shift at which the ratio of the two changes least
 * from second to second. In a file with lag L, speedMps[t + L] belongs to cadenceRpm[t].
 *
 * @param grid the ride on whole seconds
 * @returns whole seconds, -2 to 2; 0 when the recording is irregular or says too little
 */
export function learnLag(grid: SecondGrid): number {
	if (grid.irregular) return 0;
	let best = 0;
	let bestScatter = Infinity;
	for (const lagS of LAGS_S) {
		const scatter = ratioScatter(grid, lagS);
		// a lag must earn its place: a tie stays at the smaller one
		if (scatter < bestScatter * (best === lagS ? 1 : 0.97)) {
			best = lagS;
			bestScatter = scatter;
		}
	}
	return best;
}

/** Mean absolute change of the log ratio from second to second, each change cut at 8 % (shifts, dips). */
function ratioScatter(grid: SecondGrid, lagS: number): number {
	let sum = 0;
	let count = 0;
	let before = NaN;
	for (let t = 2; t < grid.seconds - 2; t++) {
		const rpm = grid.cadenceRpm[t];
		const mps = grid.speedMps[t + lagS];
		const now = rpm > PEDALLING_RPM && mps > ROLLING_MPS ? Math.log(rpm / mps) : NaN;
		const change = Math.abs(now - before);
		if (change >= 0) {
			sum += Math.min(change, 0.08);
			count++;
		}
		before = now;
	}
	return count > 200 ? sum / count : Infinity;
}
