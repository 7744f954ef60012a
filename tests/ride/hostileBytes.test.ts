import { describe, expect, it } from 'vitest';
import { flipBytes } from '../fuzz/damage';
import { judgeRide } from '../fuzz/judgeRide';
import { seeded, type Pick } from '../fuzz/seeded';
import { CSV_RIDE, FIT_RIDE, GPX_RIDE, TCX_RIDE } from '../fuzz/soundRides';

/** a ride that keeps the promises of its type, or a refusal: nothing else may come out */
const outcome = async (bytes: Uint8Array): Promise<'ride' | 'refused'> =>
	(await judgeRide(bytes)) ? 'ride' : 'refused';

async function tally(count: number, damaged: (pick: Pick) => Uint8Array, seed: number) {
	const pick = seeded(seed);
	const seen = { ride: 0, refused: 0 };
	for (let i = 0; i < count; i++) seen[await outcome(damaged(pick))]++;
	return seen;
}

describe('damaged bytes end as a ride within its bounds or as a refusal', { timeout: 60_000 }, () => {
	it.each([
		['FIT', FIT_RIDE, 1500, 11],
		['TCX', TCX_RIDE, 300, 12],
		['GPX', GPX_RIDE, 300, 16],
		['logger CSV', CSV_RIDE, 500, 13]
	] as const)('%s with one to eight bytes changed', async (_, sound, count, seed) => {
		const seen = await tally(count, (pick) => flipBytes(sound, pick), seed);
		expect(seen.ride + seen.refused).toBe(count);
		expect(seen.ride).toBeGreaterThan(count / 10);
	});

	it('FIT with single bits turned over in its head, definitions and first records', async () => {
		for (let at = 0; at < 120; at++) {
			for (let bit = 0; bit < 8; bit++) {
				const bytes = Uint8Array.from(FIT_RIDE);
				bytes[at] ^= 1 << bit;
				expect(await outcome(bytes)).toMatch(/ride|refused/);
			}
		}
	});

	it.each([
		['FIT', FIT_RIDE, 7],
		['TCX', TCX_RIDE, 37],
		['GPX', GPX_RIDE, 37],
		['logger CSV', CSV_RIDE, 7]
	] as const)('%s cut off at every so many bytes', async (_, sound, step) => {
		let rides = 0;
		for (let length = 0; length < sound.length; length += step) {
			if ((await outcome(sound.subarray(0, length))) === 'ride') rides++;
		}
		expect(rides).toBeGreaterThan(sound.length / step / 2);
	});

	it('FIT with a stretch removed, doubled or filled with noise', async () => {
		const seen = await tally(
			600,
			(pick) => {
				const from = pick(FIT_RIDE.length);
				const to = Math.min(FIT_RIDE.length, from + 1 + pick(200));
				const stretch = FIT_RIDE.subarray(from, to);
				const middle = [[], [...stretch, ...stretch], Array.from(stretch, () => pick(256))][pick(3)];
				return Uint8Array.from([...FIT_RIDE.subarray(0, from), ...middle, ...FIT_RIDE.subarray(to)]);
			},
			14
		);
		expect(seen.ride).toBeGreaterThan(60);
		expect(seen.ride + seen.refused).toBe(600);
	});

	it('noise behind a sound header', async () => {
		const seen = await tally(
			300,
			(pick) => {
				const bytes = Uint8Array.from({ length: 400 }, () => pick(256));
				bytes.set(FIT_RIDE.subarray(0, 14));
				return bytes;
			},
			15
		);
		expect(seen.refused).toBeGreaterThan(290);
	});
});
