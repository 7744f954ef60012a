import { driveRide } from './driveRide';
import { recordRide } from './recordRide';
import type { RideSpec } from './rideSpec';
import type { RideTruth, SimulatedRide } from './simulatedRide';

/**
 * Simulates a ride and records it: pure and seeded, so the same spec and seed give the same ride.
 *
 * @param spec bicycle, rider, road, hub and recorder
 * @param seed any integer
 * @returns the ride as a decoder would give it, the truth about the hub, and the motion behind both
 * @example simulateRide(randomHealthySpec(7), 7).truth.events.length // 0
 */
export function simulateRide(spec: RideSpec, seed: number): SimulatedRide {
	const motion = driveRide(spec, seed);
	const { ride, artefacts } = recordRide(spec, motion, seed);
	const end = motion.length - 1;
	const { kind } = spec.recorder.speed;
	const truth: RideTruth = {
		file: `${spec.name}.fit`,
		km: round(motion.groundM[end] / 1000, 2),
		drivenKm: round(motion.drivenM / 1000, 2),
		startUtc: Math.floor(spec.startedAtMs / 1000),
		chainrings: spec.bike.chainrings,
		cassette: spec.bike.cassette,
		circumferenceSetting: spec.recorder.speed.circumferenceM,
		speedSource: kind.startsWith('rear') ? 'rear' : kind.startsWith('front') ? 'front' : (kind as 'gps'),
		riderMarksAt: ride.marks.map((mark) => mark.timeS),
		confounders: motion.confounders + artefacts,
		events: motion.events.filter((event) => event.t1 <= ride.durationS)
	};
	return { spec, seed, ride, truth, motion };
}

const round = (value: number, digits: number) => Math.round(value * 10 ** digits) / 10 ** digits;
