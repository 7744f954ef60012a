import { describe, expect, it } from 'vitest';
import { createFormats } from '$lib/ui/formats';

const english = createFormats('en-GB', 'Europe/Zurich');
const german = createFormats('de-CH', 'Europe/Zurich');

describe('createFormats', () => {
	it('writes kilometres with the decimal sign of the locale', () => {
		expect(english.kmNumber(61_440)).toBe('61.4');
		expect(createFormats('de-DE', 'UTC').kmNumber(61_440)).toBe('61,4');
		expect(english.kmNumber(612_400)).toBe('612');
	});

	it('keeps the nought that says how finely something was measured, and writes none after what somebody set', () => {
		expect([43_000, 612_400, 30, 0].map(english.km)).toEqual([
			'43.0\u00a0km',
			'612\u00a0km',
			'0.0\u00a0km',
			'0\u00a0km'
		]);
		expect([10_000, 12_500, 259_600, 0].map(english.kmSet)).toEqual([
			'10\u00a0km',
			'12.5\u00a0km',
			'260\u00a0km',
			'0\u00a0km'
		]);
		expect([5, 0.2, 0.000_05, 1500, -0].map((value) => english.set(value))).toEqual([
			'5',
			'0.2',
			'0.00005',
			'1,500',
			'0'
		]);
		expect([12, 12.5, 6.6667].map((value) => english.set(value, 1))).toEqual(['12', '12.5', '6.7']);
		expect(createFormats('de-DE', 'UTC').set(12.5)).toBe('12,5');
		expect(english.set(NaN)).toBe('not known');
	});

	it('never writes all or nothing for a share that is only nearly so', () => {
		expect(english.share(0.9996)).toBe('99\u00a0%');
		expect(english.share(0.0004)).toBe('1\u00a0%');
		expect(english.share(1)).toBe('100\u00a0%');
		expect(english.share(0)).toBe('0\u00a0%');
	});

	it('never writes a small rate or limit as nothing', () => {
		expect([123.4, 12.34, 1.234, 0.123, 0.0123, 0].map(english.figure)).toEqual([
			'123',
			'12.3',
			'1.2',
			'0.12',
			'0.012',
			'0'
		]);
		expect(english.figure(0.00142)).toBe('0.001');
		expect(english.figure(0.00042)).toBe('below 0.001');
		expect(english.figure(1e-9)).toBe('below 0.001');
		expect(english.figure(-1e-4)).toBe('above −0.001');
	});

	it('writes no minus before nothing', () => {
		expect([english.number(-0), english.number(-0.4), english.number(-0.04, 1)]).toEqual(['0', '0', '0.0']);
		expect(english.number(-0.6)).toBe('−1');
	});

	it('writes instants in the zone of the workshop, and rides in the local time they recorded', () => {
		expect(english.dateTime('2026-05-04T16:30:00Z')).toContain('18:30');
		expect(english.rideTime('2026-05-04T16:30:00Z', 60)).toContain('17:30');
		expect(english.rideTime('2026-05-04T16:30:00Z', null)).toContain('18:30');
	});

	it('writes the clock of a ride with and without hours and tenths', () => {
		expect(english.clock(3725)).toBe('1:02:05');
		expect(english.clock(125.4, true)).toBe('2:05.4');
		expect(english.clock(59.96, true)).toBe('1:00.0');
	});

	it('says that a missing value is not known', () => {
		expect(german.number(NaN)).toBe('not known');
		expect(german.share(NaN)).toBe('not known');
	});

	it('falls back to English and UTC for what is no locale or zone', () => {
		const formats = createFormats('not a locale', 'Nowhere/At all');
		expect(formats.locale).toBe('en-GB');
		expect(formats.zone).toBe('UTC');
	});

	it('are kept for a language and a zone, but not for a long word from outside', () => {
		expect(createFormats('de-CH', 'UTC')).toBe(createFormats('de-CH', 'UTC'));
		expect(createFormats('de-CH', 'UTC')).not.toBe(createFormats('de-CH', 'Europe/Zurich'));
		const long = `en-x-${'abcdefgh-'.repeat(500)}z`;
		expect(createFormats(long, 'UTC')).not.toBe(createFormats(long, 'UTC'));
		expect(createFormats(long, 'UTC').km(61_440)).toBe('61.4\u00a0km');
	});
});
