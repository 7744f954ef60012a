import { describe, expect, it } from 'vitest';
import { MAX_FIT_BYTES } from '$lib/ride/limits';
import { FIT, FitBytes, fitRide, PEDALLING, recordFields, seconds, timestamp } from './fitBytes';
import { codes, refusalOf, ride } from './rides';

describe('refusals carry a code, a sentence for the rider and a detail for the engineer', () => {
	it.each([
		['no FIT header', Uint8Array.of(1, 2, 3, 4), 'not-a-ride-file'],
		['nothing at all', new Uint8Array(0), 'not-a-ride-file'],
		[
			'a planned course',
			new FitBytes()
				.message(0, 0, [[0, FIT.enum, 6]])
				.message(1, 20, [timestamp(0), ...recordFields(PEDALLING)])
				.close(),
			'not-a-ride-file'
		],
		['running', fitRide({ sport: [1, 0] }).close(), 'not-a-bicycle-ride'],
		['a treadmill', fitRide({ sport: [4, 1] }).close(), 'not-a-bicycle-ride'],
		[
			'a summary without records',
			new FitBytes().message(2, 18, [timestamp(0), [5, FIT.enum, 2]]).close(),
			'no-records'
		],
		['records without a time', new FitBytes().message(1, 20, recordFields(PEDALLING)).close(), 'no-clock'],
		[
			'times from power-on',
			new FitBytes().message(1, 20, [[253, FIT.uint32, 5000], ...recordFields(PEDALLING)]).close(),
			'no-clock'
		],
		['no speed', fitRide({ values: () => ({ cadenceRpm: 80, powerW: 200 }) }).close(), 'no-speed'],
		['speed 0 throughout', fitRide({ values: () => ({ ...PEDALLING, speedMps: 0 }) }).close(), 'no-speed'],
		['no cadence', fitRide({ values: () => ({ speedMps: 8, powerW: 200 }) }).close(), 'no-cadence'],
		[
			'cadence 0 throughout',
			fitRide({ values: () => ({ ...PEDALLING, cadenceRpm: 0 }) }).close(),
			'no-cadence'
		],
		['damage before the first record', new FitBytes().raw(0x0f, 1, 2).close(), 'damaged']
	])('%s', async (_, bytes, code) => {
		const refused = await refusalOf(bytes);
		expect(refused.code).toBe(code);
		expect(refused.sentence).toMatch(/^[A-Z].*\.$/);
		expect(refused.detail).toMatch(/^ride\.fit: ./);
	});

	it('refuses a file past the bound on bytes, messages, chained files and duration', async () => {
		expect((await refusalOf(withHeader(new Uint8Array(MAX_FIT_BYTES + 1)))).code).toBe('too-large');
		// a definition without fields makes messages of one byte
		const tiny = withHeader(new Uint8Array(3_100_000));
		tiny.set([0x40, 0, 0, 20, 0, 0], 14);
		expect((await refusalOf(tiny)).code).toBe('too-large');
		const empty = Array.from({ length: 40 }, () => Array.from(new FitBytes().raw().close({ dataBytes: 0 })));
		expect((await refusalOf(Uint8Array.from(empty.flat()))).code).toBe('too-large');
		const long = fitRide({ seconds: seconds(12).map((i) => i * 80_000) }).close();
		expect((await refusalOf(long)).code).toBe('too-large');
	});

	it('takes a ride that states no sport, with a warning', async () => {
		expect(codes(await ride({ sport: [0, 0] }))).toEqual(['sport-not-stated']);
		expect(codes(await ride({ sport: [200, 0] }))).toEqual(['sport-not-stated']);
		expect(codes(await ride({ sport: null }))).toEqual(['sport-not-stated']);
	});

	it('takes a ride without power, with a warning', async () => {
		const read = await ride({ values: () => ({ speedMps: 8, cadenceRpm: 80 }) });
		expect(read.channels.powerW).toBeUndefined();
		expect(codes(read)).toEqual(['no-power']);
	});
});

function withHeader(bytes: Uint8Array): Uint8Array {
	bytes.set(new FitBytes().close({ dataBytes: bytes.length - 16 }).subarray(0, 14));
	return bytes;
}
