import type { Load, Motion, TimeUnit } from '$lib/ride/columnMapping';

export const TIME_WORDS: Readonly<Record<TimeUnit, string>> = {
	s: 'seconds',
	ms: 'milliseconds',
	us: 'microseconds',
	instant: 'date and time of day'
};

export const MOTION_WORDS: Readonly<Record<Motion, string>> = {
	rpm: 'turns a minute',
	'rad/s': 'radians a second',
	degrees: 'angle in degrees',
	radians: 'angle in radians',
	turns: 'angle in turns',
	'pulse times': 'instant of the last pulse',
	'pulse count': 'number of pulses so far'
};

export const LOAD_WORDS: Readonly<Record<Load, string>> = {
	Nm: 'torque at the crank, Nm',
	W: 'power, W'
};
