import type { Ride } from '$lib/ride/ride';
import type { DriveTraces } from '$lib/slip/analysis';
import type { PackedChannel } from './messages';
import { packChannel } from './packChannel';
import { secondsOf } from './secondsOf';

/** Resolution that is kept of each trace: finer than its sensors. */
const STEPS: Record<keyof DriveTraces, number> = {
	speedMps: 0.001,
	cadenceRpm: 0.05,
	powerW: 0.5,
	distanceM: 0.1,
	engagedCadenceRpm: 0.05,
	gainedHubDeg: 0.1,
	hubTorqueNm: 0.05,
	state: 1,
	detectionLimitCrankDeg: 0.5
};

/** what the map and the height profile need, when it was recorded */
const RECORDED = { latitudeDeg: 1e-6, longitudeDeg: 1e-6, altitudeM: 0.1 } as const;

/** All that a ride's page draws, one value a second from the first record on. */
export function packTraces(ride: Ride, traces: DriveTraces): PackedChannel[] {
	const length = traces.speedMps.length;
	const names = Object.keys(STEPS) as (keyof DriveTraces)[];
	const channels = names.map((name) => packChannel(name, traces[name], STEPS[name]));
	for (const name of Object.keys(RECORDED) as (keyof typeof RECORDED)[]) {
		const channel = ride.channels[name];
		if (channel) channels.push(packChannel(name, secondsOf(channel, length), RECORDED[name]));
	}
	return channels;
}
