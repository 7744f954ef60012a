import type { RecorderSpec, RideSpec } from '../generator/rideSpec';
import { WHEELS } from './bikes';
import { BUILDS } from './hardware';
import { RIDERS, SURFACES } from './riders';
import type { PlannedRide } from './schedule';

/** Summer time of the invented workshop, seconds east of UTC. */
const LOCAL_OFFSET_S = 7200;

/**
 * The simulation's spec of a planned ride.
 *
 * @param plan one line of the schedule
 * @param kmSinceFitting distance of the build on this wheel before the ride, km
 */
export function rideSpecOf(plan: PlannedRide, kmSinceFitting: number): RideSpec {
	const wheel = WHEELS.find((candidate) => candidate.told.id === plan.wheel);
	const build = BUILDS.find((candidate) => candidate.told.id === plan.build);
	if (!wheel || !build) throw new Error(`the schedule names an unknown wheel or build: ${plan.start}`);
	const road = SURFACES[plan.surface];
	return {
		name: `${plan.start.slice(0, 10)}-${plan.wheel.toLowerCase()}-${plan.rider.toLowerCase()}`,
		startedAtMs: Date.parse(plan.start),
		localOffsetS: LOCAL_OFFSET_S,
		maxDurationS: 4 * 3600,
		maxDistanceM: plan.km * 1000,
		bike: wheel.bike,
		rider: RIDERS[plan.rider],
		road: { ...road, wet: plan.wet ?? false, temperatureC: road.temperatureC - (plan.wet ? 6 : 0) },
		hub: { ...build.behaves, kmSinceFitting },
		recorder: recorderOf(wheel.recorder, plan)
	};
}

function recorderOf(recorder: RecorderSpec, plan: PlannedRide): RecorderSpec {
	if (plan.surface === 'indoors') return { ...recorder, position: false, autoPause: false };
	switch (plan.peculiarity) {
		case 'no speed':
			return { ...recorder, speed: { ...recorder.speed, kind: 'none' }, position: false };
		case 'gaps':
			return { ...recorder, gapsPerHour: 1.2, gapS: 90 };
		case 'satellites':
			return { ...recorder, speed: { ...recorder.speed, kind: 'gps', noise: 0.03, dipsPerHour: 0 } };
		default:
			return recorder;
	}
}
