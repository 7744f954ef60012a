import { describe, expect, it } from 'vitest';
import {
	FIT,
	FitBytes,
	fitRide,
	PEDALLING,
	recordFields,
	seconds,
	START_FIT_S,
	START_MS,
	timestamp
} from './fitBytes';
import { codes, decode, ride, values } from './rides';

describe('channels', () => {
	it('reads every channel in SI units on one clock that begins with the first record', async () => {
		const read = await ride({
			seconds: [5, 6, 8],
			values: (second) => ({
				speedMps: 7.5 + second,
				distanceM: 0.25 + 8 * second,
				cadenceRpm: 80 + second,
				powerW: 200 + second,
				altitudeM: 120.4,
				temperatureC: -3,
				latitudeDeg: -47.6,
				longitudeDeg: -24.2
			})
		});
		expect(read.format).toBe('fit');
		expect(read.startedAtMs).toBe(START_MS + 5000);
		expect(read.durationS).toBe(3);
		expect(Array.from(read.channels.speedMps!.timeS)).toEqual([0, 1, 3]);
		expect(values(read, 'speedMps')).toEqual([12.5, 13.5, 15.5]);
		expect(values(read, 'distanceM')).toEqual([40.25, 48.25, 64.25]);
		expect(values(read, 'cadenceRpm')).toEqual([85, 86, 88]);
		expect(values(read, 'powerW')).toEqual([205, 206, 208]);
		expect(values(read, 'altitudeM')[0]).toBeCloseTo(120.4, 10);
		expect(values(read, 'temperatureC')).toEqual([-3, -3, -3]);
		expect(values(read, 'latitudeDeg')[0]).toBeCloseTo(-47.6, 6);
		expect(values(read, 'longitudeDeg')[0]).toBeCloseTo(-24.2, 6);
		expect(read.channels.cadenceRpm!.timeS).toBe(read.channels.speedMps!.timeS);
		expect(codes(read)).toEqual([]);
	});

	it('leaves a missing value missing and never writes 0 for it', async () => {
		const read = await ride({
			seconds: seconds(4),
			values: (second) => (second === 2 ? { speedMps: 8 } : PEDALLING)
		});
		expect(values(read, 'cadenceRpm')).toEqual([85, 85, NaN, 85]);
		expect(values(read, 'powerW')).toEqual([190, 190, NaN, 190]);
	});

	it('takes the enhanced fields where the plain ones are missing', async () => {
		const read = await ride({
			values: () => ({ enhancedSpeedMps: 9.25, enhancedAltitudeM: 3100.2, cadenceRpm: 90, powerW: 210 })
		});
		expect(values(read, 'speedMps')[3]).toBe(9.25);
		expect(values(read, 'altitudeM')[3]).toBeCloseTo(3100.2, 10);
	});

	it('takes the plain field where both are there', async () => {
		const read = await ride({ values: () => ({ ...PEDALLING, speedMps: 8, enhancedSpeedMps: 9 }) });
		expect(values(read, 'speedMps')[0]).toBe(8);
	});

	it('adds the fraction of a turn that some devices write beside the cadence', async () => {
		const bytes = fitRide({ seconds: [0, 1] });
		bytes.message(5, 20, [timestamp(2), ...recordFields(PEDALLING), [53, FIT.uint8, 64]]);
		expect(values(await decode(bytes.close()), 'cadenceRpm')).toEqual([85, 85, 85.5]);
	});

	it('reads big-endian messages', async () => {
		const read = await decode(fitRide({}, new FitBytes(true)).close());
		expect(read.startedAtMs).toBe(START_MS);
		expect(values(read, 'powerW')[0]).toBe(190);
	});

	it('reads compressed timestamps, over the turn of their five bits as well', async () => {
		const bytes = fitRide({ seconds: [0], sport: null });
		for (let second = 1; second < 70; second++) {
			bytes.compressed(1, START_FIT_S + second, recordFields({ ...PEDALLING, powerW: second }));
		}
		const read = await decode(bytes.close());
		expect(Array.from(read.channels.powerW!.timeS)).toEqual(seconds(70));
		expect(values(read, 'powerW')).toEqual([190, ...seconds(69, 1)]);
	});

	it('never lets a developer field take the place of a native one', async () => {
		const bytes = new FitBytes();
		bytes.message(0, 0, [[0, FIT.enum, 4]]);
		bytes.message(5, 207, [[3, FIT.uint8, 0]]);
		for (const [number, name] of [
			[0, 'power'],
			[1, 'timestamp']
		] as const) {
			bytes.message(6, 206, [
				[0, FIT.uint8, 0],
				[1, FIT.uint8, number],
				[2, FIT.uint8, FIT.uint8],
				[3, FIT.string, name]
			]);
		}
		for (const second of seconds(10)) {
			bytes.message(
				1,
				20,
				[timestamp(second), ...recordFields(PEDALLING)],
				[
					[0, [77], 0],
					[1, [5], 0]
				]
			);
		}
		bytes.message(2, 18, [timestamp(9), [5, FIT.enum, 2]]);
		const read = await decode(bytes.close());
		expect(values(read, 'powerW')).toEqual(Array(10).fill(190));
		expect(read.durationS).toBe(9);
	});

	it('turns values that no bicycle can have into missing ones and counts them', async () => {
		const read = await ride({
			seconds: seconds(6),
			values: (second) =>
				second === 3
					? { speedMps: 55, cadenceRpm: 254, powerW: 9000, altitudeM: 11000 }
					: { ...PEDALLING, altitudeM: 10 }
		});
		for (const name of ['speedMps', 'cadenceRpm', 'powerW', 'altitudeM'] as const) {
			expect(values(read, name)[3]).toBeNaN();
			expect(values(read, name)[2]).not.toBeNaN();
		}
		const warning = read.warnings.find(({ code }) => code === 'implausible-values');
		expect(warning?.detail).toBe('speedMps: 1, cadenceRpm: 1, powerW: 1, altitudeM: 1');
	});

	it('leaves out half positions and the point 0/0', async () => {
		const read = await ride({
			seconds: seconds(4),
			values: (second) => ({
				...PEDALLING,
				latitudeDeg: second === 0 ? 0 : -47.6,
				longitudeDeg: second === 0 ? 0 : second === 1 ? undefined : -24.2
			})
		});
		expect(values(read, 'latitudeDeg').map(Number.isNaN)).toEqual([true, true, false, false]);
		expect(values(read, 'longitudeDeg').map(Number.isNaN)).toEqual([true, true, false, false]);
	});

	it('goes on from the last figure where the recorded distance began again', async () => {
		const read = await ride({
			seconds: seconds(8),
			values: (second) => ({ ...PEDALLING, distanceM: second < 4 ? 16 + 8 * second : 8 * (second - 4) })
		});
		expect(values(read, 'distanceM')).toEqual([16, 24, 32, 40, 40, 48, 56, 64]);
		expect(codes(read)).toContain('distance-restarted');
	});

	it('counts distance from the first record where the device went on from earlier riding, and says so', async () => {
		const read = await ride({
			seconds: seconds(8),
			values: (second) => ({ ...PEDALLING, distanceM: 35_000 + 8 * second })
		});
		expect(values(read, 'distanceM').slice(0, 3)).toEqual([0, 8, 16]);
		expect(codes(read)).toContain('distance-from-before');
	});

	it('keeps a first distance that comes late and can have been ridden', async () => {
		const read = await ride({
			seconds: seconds(8),
			values: (second) => ({ ...PEDALLING, ...(second >= 3 && { distanceM: 8 * second }) })
		});
		expect(values(read, 'distanceM').slice(0, 5)).toEqual([NaN, NaN, NaN, 24, 32]);
		expect(codes(read)).not.toContain('distance-from-before');
	});

	it('drops a lone distance that falls back or leaps', async () => {
		const read = await ride({
			seconds: seconds(6),
			values: (second) => ({ ...PEDALLING, distanceM: [0, 8, 90000, 24, 3, 40][second] })
		});
		expect(values(read, 'distanceM')).toEqual([0, 8, NaN, 24, NaN, 40]);
		expect(codes(read)).toContain('implausible-values');
	});
});
