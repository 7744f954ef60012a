/** a longer step says too little about the speed at its end */
const LONGEST_STEP_S = 10;

/**
 * Speed where a file records distance alone: the mean over the step that ends at a record.
 * @param atMs instants of the records, milliseconds
 * @param distanceM recorded distance, NaN = missing
 * @returns m/s for each record, NaN where the step before it is unknown, backward or longer than 10 s
 */
export function speedFromDistance(atMs: Float64Array, distanceM: Float64Array): Float64Array {
	const speedMps = new Float64Array(atMs.length).fill(NaN);
	let last = -1;
	for (let i = 0; i < atMs.length; i++) {
		if (Number.isNaN(distanceM[i]) || Number.isNaN(atMs[i])) continue;
		if (last >= 0) {
			const seconds = (atMs[i] - atMs[last]) / 1000;
			const metres = distanceM[i] - distanceM[last];
			if (seconds > 0 && seconds <= LONGEST_STEP_S && metres >= 0) speedMps[i] = metres / seconds;
		}
		last = i;
	}
	return speedMps;
}
