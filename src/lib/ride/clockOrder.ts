import { longestRisingRun } from './longestRisingRun';
import { MAX_STEP_MS } from './plausible';

export interface ClockOrder {
	/** strictly increasing instants, milliseconds since 1970 UTC */
	readonly atMs: Float64Array;
	/** for each record of the file its place in `atMs`, -1 = left out */
	readonly place: Int32Array;
	/** records without a usable instant */
	readonly withoutClock: number;
	/** records left out because their instant runs against that of most others */
	readonly outOfOrder: number;
	/** records that share the instant of an earlier one and were merged into it */
	readonly repeated: number;
}

/**
 * Puts records on one strictly increasing clock. The largest set of records whose times never run
 * backward is kept, so that one wrong instant costs one record and not the rest of the ride; a step of
 * more than a day splits the ride and the part with most records is kept; records of the same instant
 * become one.
 * @param recordedAtMs instant of each record in file order, milliseconds; NaN = none
 * @returns the clock and where each record stands on it; an empty clock when no record has a time
 * @example clockOrder(Float64Array.of(1000, 2000, 9000, 3000)).place // 0, 1, -1, 2
 */
export function clockOrder(recordedAtMs: Float64Array): ClockOrder {
	const rising = longestRisingRun(recordedAtMs);
	const [from, to] = largestUnbrokenStretch(recordedAtMs, rising);
	const place = new Int32Array(recordedAtMs.length).fill(-1);
	const atMs = new Float64Array(to - from);
	let count = 0;
	for (let i = from; i < to; i++) {
		const instant = recordedAtMs[rising[i]];
		if (count === 0 || instant > atMs[count - 1]) atMs[count++] = instant;
		place[rising[i]] = count - 1;
	}
	let withoutClock = 0;
	for (const instant of recordedAtMs) if (!Number.isFinite(instant)) withoutClock++;
	return {
		atMs: atMs.slice(0, count),
		place,
		withoutClock,
		outOfOrder: recordedAtMs.length - withoutClock - (to - from),
		repeated: to - from - count
	};
}

/** [from, to) in `rising`: the stretch with most records that has no step of more than a day. */
function largestUnbrokenStretch(recordedAtMs: Float64Array, rising: Int32Array): [number, number] {
	let best: [number, number] = [0, 0];
	let from = 0;
	for (let i = 1; i <= rising.length; i++) {
		const broken = i === rising.length || recordedAtMs[rising[i]] - recordedAtMs[rising[i - 1]] > MAX_STEP_MS;
		if (!broken) continue;
		if (i - from > best[1] - best[0]) best = [from, i];
		from = i;
	}
	return best;
}
