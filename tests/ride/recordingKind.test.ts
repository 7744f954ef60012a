import { describe, expect, it } from 'vitest';
import { recordingKind } from '$lib/ride/recordingKind';
import { steadyRecords, toRide } from '../slip/steadyRide';

describe('recordingKind', () => {
	const ride = toRide(steadyRecords(1, 300));

	it('names where speed comes from and the rhythm of the records', () => {
		expect(recordingKind(ride)).toEqual({ speedFrom: 'wheel', rhythm: 'each second' });
		expect(recordingKind({ ...ride, speedSource: 'position', irregular: true })).toEqual({
			speedFrom: 'position',
			rhythm: 'irregularly'
		});
		expect(recordingKind({ ...ride, speedSource: 'not known' }).speedFrom).toBe('not known');
	});

	it('knows a logger by its many records a second and takes its wheel for the source of speed', () => {
		const timeS = Float64Array.from({ length: 3000 }, (_, i) => i / 10);
		const logger = {
			...ride,
			speedSource: 'not known' as const,
			channels: { wheelRpm: { timeS, value: new Float64Array(3000).fill(200) } }
		};
		expect(recordingKind(logger)).toEqual({ speedFrom: 'wheel', rhythm: 'many times a second' });
	});

	it('takes a ride without channels for one of the usual rhythm', () => {
		expect(recordingKind({ ...ride, channels: {} }).rhythm).toBe('each second');
	});
});
