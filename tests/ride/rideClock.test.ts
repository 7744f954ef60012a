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

describe('the clock', () => {
	it('merges records of the same instant, the earlier value first, and says so', async () => {
		const bytes = fitRide({ seconds: [0, 1, 2] });
		bytes.message(5, 20, [timestamp(2), ...recordFields({ powerW: 300, temperatureC: 21 })]);
		const read = await decode(bytes.close());
		expect(Array.from(read.channels.powerW!.timeS)).toEqual([0, 1, 2]);
		expect(values(read, 'powerW')).toEqual([190, 190, 190]);
		expect(values(read, 'temperatureC')).toEqual([NaN, NaN, 21]);
		expect(codes(read)).toContain('repeated-times');
	});

	it('leaves out the records that run against the clock, and keeps the others', async () => {
		const read = await ride({ seconds: [0, 1, 2, 50_000, 3, 4, -900, 5] });
		expect(Array.from(read.channels.powerW!.timeS)).toEqual([0, 1, 2, 3, 4, 5]);
		expect(read.warnings.find(({ code }) => code === 'records-out-of-order')?.detail).toMatch(/^2 records/);
	});

	it('keeps the longer part where the clock jumps by more than a day', async () => {
		const read = await ride({ seconds: [-1e6, -1e6 + 1, ...seconds(10)] });
		expect(read.startedAtMs).toBe(START_MS);
		expect(read.durationS).toBe(9);
		expect(codes(read)).toContain('records-out-of-order');
	});

	it('keeps a record without a time out of the ride', async () => {
		const bytes = fitRide({ seconds: seconds(5) });
		bytes.message(5, 20, [[253, FIT.uint32, 0xffffffff], ...recordFields(PEDALLING)]);
		const read = await decode(bytes.close());
		expect(values(read, 'powerW')).toHaveLength(5);
		expect(read.warnings.find(({ code }) => code === 'records-out-of-order')?.detail).toMatch(
			/1 without a time$/
		);
	});

	it('keeps the local offset of the device as whole quarters of an hour', async () => {
		const activity = (localS: number) => (bytes: FitBytes) =>
			void bytes.message(5, 34, [timestamp(19), [5, FIT.uint32, START_FIT_S + 19 + localS]]);
		expect((await ride({ also: activity(2 * 3600 + 3) })).localOffsetS).toBe(7200);
		expect((await ride({ also: activity(-3.5 * 3600) })).localOffsetS).toBe(-12600);
		expect((await ride({ also: activity(2 * 3600 + 400) })).localOffsetS).toBeNull();
		expect((await ride({ also: activity(40 * 3600) })).localOffsetS).toBeNull();
		expect((await ride()).localOffsetS).toBeNull();
	});
});
