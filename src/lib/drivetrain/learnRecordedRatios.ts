import type { DriveSignals } from './driveSignals';
import { median } from './median';

/** A recorded shift leads the change of ratio by up to this long. */
const SETTLE_S = 4;
/** A recorded gear that was in for less time is not learned. */
const LEAST_SECONDS = 8;

/**
 * One ratio a recorded gear: the median in pressing seconds that are well clear of shifts.
 *
 * @param signals the ride's signals
 * @returns ln(crank turns per metre) by gear code; NaN where the gear was hardly used
 */
export function learnRecordedRatios(signals: DriveSignals): Float64Array {
	const { gearCode, gearCodes } = signals.grid;
	const samples: number[][] = gearCodes.map(() => []);
	let since = 0;
	for (let t = 1; t < gearCode.length; t++) {
		since = gearCode[t] === gearCode[t - 1] ? since + 1 : 0;
		if (since < SETTLE_S || gearCode[t] < 0 || !signals.pressing[t]) continue;
		if (gearCode[Math.min(gearCode.length - 1, t + 1)] !== gearCode[t]) continue;
		samples[gearCode[t]].push(signals.logRatio[t]);
	}
	return Float64Array.from(samples, (values) => (values.length >= LEAST_SECONDS ? median(values) : NaN));
}
