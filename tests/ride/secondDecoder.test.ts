import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHANNEL_NAMES, RideRefused } from '$lib/ride/ride';
import { codes, decode } from './rides';
import { secondDecoder, type Expected } from './secondDecoder';

const labelled = '/work/shared/labelled-rides';
const samples = fitFilesUnder('sample-rides');
const rides = [...samples, ...fitFilesUnder(labelled)];
if (!existsSync(labelled)) console.log('skipped: the labelled rides are not on this machine');

/** what the second decoder refuses: chained, cut off, bad checksum */
const DAMAGED = ['recording-not-closed', 'file-cut-off', 'bad-checksum', 'file-broken-inside'];

describe('decodeFit against a second, independent decoder', () => {
	it.skipIf(rides.length === 0).each(rides)('%s', { timeout: 30_000 }, async (path) => {
		const file = readFileSync(path);
		const read = await decode(file, basename(path)).catch((error: unknown) => {
			if (error instanceof RideRefused) return error;
			throw error;
		});
		if (read instanceof RideRefused) {
			// the example workshop has a ride without a speed sensor: the other must find no speed, too
			expect(read.code).toBe('no-speed');
			expect(secondDecoder(file).channels.speedMps.filter((speed) => speed > 0)).toEqual([]);
			return;
		}
		let expected: Expected;
		try {
			expected = secondDecoder(file);
		} catch (error) {
			// it takes sound files only: then ours must have said that this one is not
			expect([String(error), codes(read).some((code) => DAMAGED.includes(code))]).toEqual([
				String(error),
				true
			]);
			return;
		}
		expect(read.startedAtMs).toBe(expected.startedAtMs);
		expect(read.durationS).toBe(expected.timeS.at(-1));
		for (const name of CHANNEL_NAMES) {
			const others = expected.channels[name];
			const channel = read.channels[name];
			if (!others || others.every(Number.isNaN)) {
				expect([name, channel]).toEqual([name, undefined]);
				continue;
			}
			expect(Array.from(channel!.timeS)).toEqual(expected.timeS);
			const wrong = others.findIndex((value, i) => !sameNumber(value, channel!.value[i]));
			expect([name, wrong, others[wrong], channel!.value[wrong]]).toEqual([name, -1, undefined, undefined]);
		}
		const marks = [...new Set(expected.marksS)].filter((timeS) => timeS > 0);
		expect(read.marks.map(({ timeS }) => timeS)).toEqual(marks.sort((a, b) => a - b));
		expect(
			read.gearEvents.map(({ rearIndex, rearTeeth, frontIndex, frontTeeth }) => [
				rearIndex,
				rearTeeth,
				frontIndex,
				frontTeeth
			])
		).toEqual(expected.shifts.map((shift) => [shift.rear, shift.rearTeeth, shift.front, shift.frontTeeth]));
	});
});

/** the two divide in another order: a few units in the last place of a double */
function sameNumber(a: number, b: number): boolean {
	return Number.isNaN(a) ? Number.isNaN(b) : Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(a));
}

function fitFilesUnder(folder: string): string[] {
	if (!existsSync(folder)) return [];
	return (readdirSync(folder, { recursive: true }) as string[])
		.filter((name) => name.endsWith('.fit'))
		.sort()
		.map((name) => `${folder}/${name}`);
}
