import type { Ride, SpeedSource } from './ride';

/**
 * What kind of device recorded a ride, as far as the file tells what matters to finding slips. Makes and
 * models are left out on purpose: files often do not name them, and two of a model may be set up
 * differently. "wheel" does not say which wheel.
 */
export interface RecordingKind {
	readonly speedFrom: SpeedSource;
	readonly rhythm: 'each second' | 'irregularly' | 'many times a second';
}

/** More records a second than this make a logger. */
const LOGGER_HZ = 5;

/**
 * @param ride any ride
 * @returns the kind; a ride without channels is "each second"
 * @example recordingKind(ride) // { speedFrom: 'wheel', rhythm: 'each second' }
 */
export function recordingKind(ride: Ride): RecordingKind {
	const records = Math.max(0, ...Object.values(ride.channels).map(({ timeS }) => timeS.length));
	const many = records > LOGGER_HZ * (ride.durationS + 1);
	return {
		speedFrom: ride.channels.wheelRpm && !ride.channels.speedMps ? 'wheel' : ride.speedSource,
		rhythm: many ? 'many times a second' : ride.irregular ? 'irregularly' : 'each second'
	};
}
