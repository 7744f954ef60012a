import type { Ride } from '$lib/ride/ride';
import { toSeconds } from './toSeconds';

/** The ride at one value a second: index = whole seconds from the first record, NaN = not recorded. */
export interface SecondGrid {
	readonly seconds: number;
	/** where records are missing for at most ten seconds, speed and distance are interpolated: they are smooth */
	readonly speedMps: Float64Array;
	readonly distanceM: Float64Array;
	/** never filled: a spike between two records was not recorded */
	readonly cadenceRpm: Float64Array;
	readonly powerW: Float64Array;
	/** number of the recorded gear that is in (see gearCodes), -1 = not recorded */
	readonly gearCode: Int16Array;
	/** what each gear code stands for, as recorded */
	readonly gearCodes: readonly { frontTeeth: number | null; rearTeeth: number | null }[];
	/** seconds at which a shift was recorded, ascending */
	readonly shiftS: readonly number[];
	readonly irregular: boolean;
}

/** Speed and distance are carried over missing records for at most this long. */
const FILL_LIMIT_S = 10;

function fillShortGaps(values: Float64Array): Float64Array {
	let last = -1;
	for (let i = 0; i < values.length; i++) {
		if (Number.isNaN(values[i])) continue;
		if (last >= 0 && i - last > 1 && i - last <= FILL_LIMIT_S) {
			for (let k = last + 1; k < i; k++) {
				values[k] = values[last] + ((values[i] - values[last]) * (k - last)) / (i - last);
			}
		}
		last = i;
	}
	return values;
}

/** Speed from distance where the recording has no speed of its own. */
function speedFromDistance(distanceM: Float64Array): Float64Array {
	const speedMps = new Float64Array(distanceM.length).fill(NaN);
	for (let i = 1; i < distanceM.length; i++) {
		const step = distanceM[i] - distanceM[i - 1];
		if (step >= 0 && step < 40) speedMps[i] = step;
	}
	return speedMps;
}

/** Distance as recorded, else the running sum of speed; never falling. */
function distanceOrSum(recordedM: Float64Array, speedMps: Float64Array): Float64Array {
	const hasRecorded = recordedM.some((value) => value > 0);
	const distanceM = new Float64Array(speedMps.length);
	let running = 0;
	for (let i = 0; i < speedMps.length; i++) {
		if (hasRecorded) {
			if (recordedM[i] > running) running = recordedM[i];
		} else if (speedMps[i] > 0) running += speedMps[i];
		distanceM[i] = running;
	}
	return distanceM;
}

/**
 * Puts a ride on a clock of whole seconds.
 *
 * @param ride any ride; loggers with a wheel channel need `circumferenceM` to have a speed
 * @param circumferenceM rolled circumference of the driven wheel, for `wheelRpm`
 * @returns arrays of equal length, one entry a second from the first record to the last
 */
export function secondGrid(ride: Ride, circumferenceM: number): SecondGrid {
	const seconds = Math.floor(ride.durationS + 1e-6) + 1;
	const channels = ride.channels;
	const recordedM = fillShortGaps(toSeconds(channels.distanceM, seconds));
	let speedMps: Float64Array;
	if (channels.speedMps) speedMps = toSeconds(channels.speedMps, seconds);
	else if (channels.wheelRpm) {
		speedMps = toSeconds(channels.wheelRpm, seconds).map((rpm) => (rpm * circumferenceM) / 60);
	} else speedMps = speedFromDistance(recordedM);
	fillShortGaps(speedMps);
	const cadenceRpm = toSeconds(channels.cadenceRpm, seconds);
	let powerW = toSeconds(channels.powerW, seconds);
	if (!channels.powerW && channels.crankTorqueNm) {
		powerW = toSeconds(channels.crankTorqueNm, seconds).map(
			(torqueNm, i) => (torqueNm * 2 * Math.PI * cadenceRpm[i]) / 60
		);
	}
	const gears = recordedGears(ride, seconds);
	const distanceM = distanceOrSum(recordedM, speedMps);
	return { seconds, speedMps, distanceM, cadenceRpm, powerW, irregular: ride.irregular, ...gears };
}

/** One code a recorded gear; -1 before the first recorded shift. */
function recordedGears(ride: Ride, seconds: number) {
	const gearCode = new Int16Array(seconds).fill(-1);
	const gearCodes: { frontTeeth: number | null; rearTeeth: number | null }[] = [];
	const shiftS: number[] = [];
	const codes = new Map<string, number>();
	ride.gearEvents.forEach((event, i) => {
		const key = [event.frontIndex, event.frontTeeth, event.rearIndex, event.rearTeeth].join('/');
		if (!codes.has(key)) {
			codes.set(key, gearCodes.length);
			gearCodes.push({ frontTeeth: event.frontTeeth, rearTeeth: event.rearTeeth });
		}
		const from = Math.max(0, Math.floor(event.timeS));
		const next = ride.gearEvents[i + 1]?.timeS ?? seconds;
		gearCode.fill(codes.get(key)!, from, Math.max(from, Math.min(seconds, Math.floor(next))));
		if (i > 0 && key !== keyOf(ride.gearEvents[i - 1])) shiftS.push(from);
	});
	return { gearCode, gearCodes, shiftS };
}

function keyOf(event: Ride['gearEvents'][number]): string {
	return [event.frontIndex, event.frontTeeth, event.rearIndex, event.rearTeeth].join('/');
}
