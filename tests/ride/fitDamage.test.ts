import { describe, expect, it } from 'vitest';
import { FIT, fitRide, seconds, START_FIT_S, START_MS, timestamp } from './fitBytes';
import { codes, decode, ride, values } from './rides';

describe('chained and damaged files', () => {
	const join = (...parts: Uint8Array[]) => Uint8Array.from(parts.flatMap((part) => Array.from(part)));

	it('reads every file of a chain as one ride', async () => {
		const first = fitRide({ seconds: seconds(20) }).close();
		const second = fitRide({ seconds: seconds(20, 40) }).close();
		const read = await decode(join(first, second));
		expect(values(read, 'powerW')).toHaveLength(40);
		expect(read.gaps).toEqual([[19, 40]]);
		expect(codes(read)).toEqual(['several-parts']);
	});

	it('leaves out the parts of a chain that are another sport', async () => {
		const run = fitRide({ seconds: seconds(20), sport: [1, 0] }).close();
		const read = await decode(join(run, fitRide({ seconds: seconds(20, 40) }).close()));
		expect(read.startedAtMs).toBe(START_MS + 40_000);
		expect(codes(read)).toEqual(['other-sports-left-out']);
	});

	it('leaves out the stretch of another sport inside one file', async () => {
		const read = await ride({
			seconds: seconds(40),
			also: (bytes) =>
				void bytes.message(2, 18, [
					timestamp(15),
					[2, FIT.uint32, START_FIT_S],
					[5, FIT.enum, 5],
					[6, FIT.enum, 18]
				])
		});
		expect(read.startedAtMs).toBe(START_MS + 15_000);
		expect(codes(read)).toContain('other-sports-left-out');
	});

	it.each([12, 14] as const)(
		'reads a recording that was not closed (%i header bytes)',
		async (headerBytes) => {
			const bytes = fitRide({ sport: null }).close({ dataBytes: 0, headerBytes });
			const read = await decode(bytes.subarray(0, bytes.length - 2));
			expect(values(read, 'powerW')).toHaveLength(20);
			expect(codes(read)).toEqual(['recording-not-closed', 'sport-not-stated']);
			expect(read.warnings[0].detail).toContain('; 0 bytes lost');
		}
	);

	it('takes the checksum after a recording without a stated size for what it is', async () => {
		const body = fitRide({ sport: null });
		const bytes = body.close({ dataBytes: 0 });
		const read = await decode(bytes);
		expect(values(read, 'powerW')).toHaveLength(20);
		expect(read.warnings[0].detail).toContain('; 0 bytes lost');
	});

	it('reads past a size that the device had not brought up to date', async () => {
		const read = await decode(fitRide({ sport: null }).close({ dataBytes: 60 }));
		expect(values(read, 'powerW')).toEqual(Array(20).fill(190));
		expect(codes(read)[0]).toBe('recording-not-closed');
	});

	it('does not count reserved space at the end as lost riding', async () => {
		const bytes = fitRide({ sport: null }).close({ dataBytes: 0 });
		const read = await decode(join(bytes.subarray(0, bytes.length - 2), new Uint8Array(4096).fill(255)));
		expect(values(read, 'powerW')).toEqual(Array(20).fill(190));
		expect(read.warnings[0].detail).toContain('; 0 bytes lost');
	});

	it('does not read the zeros that fill up a recording that was not closed', async () => {
		const bytes = fitRide({ sport: null }).close({ dataBytes: 0 });
		const read = await decode(join(bytes.subarray(0, bytes.length - 2), new Uint8Array(512)));
		expect(values(read, 'powerW')).toEqual(Array(20).fill(190));
	});

	it('reads a file cut off at any byte up to its last whole record, and names what was lost', async () => {
		const whole = fitRide({ sport: null, seconds: seconds(30) });
		const bytes = whole.close();
		const record = 1 + 4 + 1 + 2 + 2;
		for (let length = 60; length < bytes.length - 2; length++) {
			const left = bytes.subarray(0, length);
			const lost = bytes.length - 2 - length;
			const wholeRecords = Math.floor(30 - lost / record);
			if (wholeRecords < 2) continue;
			const read = await decode(left);
			expect(values(read, 'powerW')).toEqual(Array(wholeRecords).fill(190));
			expect(read.warnings[0].code).toBe('file-cut-off');
			const lostBytes = (30 - wholeRecords) * record;
			expect(read.warnings[0].sentence).toContain(`Lost: ${lostBytes} bytes`);
		}
	});

	it('estimates the seconds that were lost from the bytes', async () => {
		const bytes = fitRide({ sport: null, seconds: seconds(600) }).close();
		const read = await decode(bytes.subarray(0, 14 + 20 + 10 * 300));
		const stated = Number(/about (\d+) s/.exec(read.warnings[0].sentence)?.[1]);
		expect(stated).toBeGreaterThan(295);
		expect(stated).toBeLessThan(310);
	});

	it('reads a file whose checksum alone is missing', async () => {
		const bytes = fitRide().close();
		const read = await decode(bytes.subarray(0, bytes.length - 2));
		expect(values(read, 'powerW')).toHaveLength(20);
		expect(codes(read)).toEqual(['file-cut-off']);
		expect(read.warnings[0].detail).toContain('; 0 bytes lost');
	});

	it('reads a file with a bad checksum and says that values may have changed', async () => {
		const read = await decode(fitRide().close({ checksum: 0x1234 }));
		expect(values(read, 'powerW')).toHaveLength(20);
		expect(codes(read)).toEqual(['bad-checksum']);
	});

	it('reads up to the damage inside a file, and the next file of the chain', async () => {
		const broken = fitRide({ also: (bytes) => void bytes.raw(0x0f, 1, 2, 3) });
		const read = await decode(join(broken.close(), fitRide({ seconds: seconds(20, 30) }).close()));
		expect(values(read, 'powerW')).toHaveLength(40);
		expect(codes(read)).toContain('file-broken-inside');
		expect(read.warnings[0].detail).toContain('no definition');
	});

	it('names bytes after the recording that belong to nothing', async () => {
		const read = await decode(join(fitRide().close(), Uint8Array.of(1, 2, 3)));
		expect(values(read, 'powerW')).toHaveLength(20);
		expect(codes(read)).toEqual(['trailing-bytes']);
	});
});
