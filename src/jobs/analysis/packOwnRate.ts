import type { Gear } from '$lib/drivetrain/bike';
import { engagedCadence } from '$lib/drivetrain/engagedCadence';
import type { Channel, Ride } from '$lib/ride/ride';
import type { DriveTraces } from '$lib/slip/analysis';
import type { PackedChannel } from './messages';
import { onEvenClock } from './onEvenClock';
import { packChannel } from './packChannel';

/** Resolution that is kept: finer than encoders and strain gauges. */
const STEPS = { crankRpm: 0.1, engagedRpm: 0.1, wheelMps: 0.005, crankTorqueNm: 0.1 } as const;
/** Slower recordings have nothing to show between whole seconds that strips of pixels could tell apart. */
const FASTER_THAN_HZ = 5;
/** A second's gear is told by its development; scatter of a second is less. */
const SAME_GEAR = 0.08;

/**
 * What a logger saw at its own rate, for close looks: crank, the cadence that the wheel asks for, speed of the
 * wheel, torque at each instant. None of it is counted anywhere.
 *
 * @param traces the ride at one value a second: tells which gear is in
 * @param circumferenceM of the driven wheel
 * @returns empty where crank and wheel were not recorded together on a fast clock
 */
export function packOwnRate(
	ride: Ride,
	traces: DriveTraces,
	gears: readonly Gear[],
	circumferenceM: number
): PackedChannel[] {
	const { cadenceRpm: crank, wheelRpm: wheel, crankTorqueNm: torque } = ride.channels;
	if (!crank || !wheel) return [];
	const clock = onEvenClock(crank.timeS, ride.durationS);
	if (!clock || clock.sampleS * FASTER_THAN_HZ > 1) return [];
	const { sampleS } = clock;
	const of = ({ timeS, value }: Channel) => clock.values(timeS, value);
	const wheelMps = () => of(wheel).map((rpm) => (rpm * circumferenceM) / 60);
	const developmentM = developments(traces, gears);
	const gearAt = (i: number) => developmentM[Math.min(developmentM.length - 1, Math.floor(i * sampleS))];
	const lines = {
		crankRpm: () => of(crank),
		engagedRpm: () => wheelMps().map((speedMps, i) => engagedCadence(speedMps, gearAt(i))),
		wheelMps,
		...(torque && { crankTorqueNm: () => of(torque) })
	};
	// one after the other: each is tens of megabytes
	return Object.entries(lines).map(([name, values]) => ({
		...packChannel(name, values(), STEPS[name as keyof typeof STEPS]),
		sampleS
	}));
}

/** the development of the gear that is in at each second, metres; NaN where none is known */
function developments({ speedMps, engagedCadenceRpm }: DriveTraces, gears: readonly Gear[]): Float64Array {
	const result = new Float64Array(speedMps.length).fill(NaN);
	let last = NaN;
	for (let t = 0; t < result.length; t++) {
		const seen = (60 * speedMps[t]) / engagedCadenceRpm[t];
		let best = SAME_GEAR;
		for (const gear of gears) {
			const off = Math.abs(Math.log(gear.developmentM / seen));
			if (off < best) [best, last] = [off, gear.developmentM];
		}
		// standing still tells no gear: that of before is in
		result[t] = last;
	}
	return result;
}
