import { ageWindows, type RideLength } from '$lib/hardware/ageWindows';
import { describe, expect, it } from 'vitest';

/** Small seeded generator (Park and Miller 1988, Communications of the ACM 31:1192). */
function seeded(seed: number): () => number {
	let state = seed;
	return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

function shuffled<T>(values: readonly T[], random: () => number): T[] {
	const result = [...values];
	for (let i = result.length - 1; i > 0; i--) {
		const other = Math.floor(random() * (i + 1));
		[result[i], result[other]] = [result[other], result[i]];
	}
	return result;
}

describe('ageWindows', () => {
	it('lays rides end to end in order of their start', () => {
		const rides = [
			{ rideId: 2, startMs: 9, totalM: 50 },
			{ rideId: 1, startMs: 3, totalM: 20 }
		];
		expect(ageWindows(rides)).toEqual([
			{ rideId: 1, fromM: 0, toM: 20 },
			{ rideId: 2, fromM: 20, toM: 70 }
		]);
	});

	it('gives no windows for no rides', () => {
		expect(ageWindows([])).toEqual([]);
	});

	it('refuses a distance that is negative or not known', () => {
		expect(() => ageWindows([{ rideId: 5, startMs: 0, totalM: NaN }])).toThrow('totalM of ride 5: NaN');
		expect(() => ageWindows([{ rideId: 5, startMs: 0, totalM: -1 }])).toThrow(RangeError);
	});

	it('ends in the same sums whatever the order of uploads and corrections (200 seeded shuffles)', () => {
		const random = seeded(20261125);
		for (let round = 0; round < 200; round++) {
			const final: RideLength[] = Array.from({ length: 1 + Math.floor(random() * 30) }, (_, rideId) => ({
				rideId,
				// some start at the same instant
				startMs: Math.floor(random() * 20) * 3_600_000,
				totalM: Math.floor(random() * 9e5) / 10
			}));
			// a ledger that receives the rides in any order, some first with a wrong length, some withdrawn between
			const known = new Map<number, RideLength>();
			for (const ride of shuffled(final, random)) {
				known.set(ride.rideId, random() < 0.3 ? { ...ride, totalM: random() * 1e5 } : ride);
				if (random() < 0.2) known.delete(ride.rideId);
			}
			for (const ride of shuffled(final, random)) known.set(ride.rideId, ride);
			expect(ageWindows([...known.values()])).toEqual(ageWindows(final));
		}
	});

	it('keeps the windows without gaps or overlaps', () => {
		const random = seeded(7);
		const rides = Array.from({ length: 40 }, (_, rideId) => ({
			rideId,
			startMs: random() * 1e9,
			totalM: random() * 1e5
		}));
		const windows = ageWindows(rides);
		windows.forEach((window, index) => {
			expect(window.fromM).toBe(index === 0 ? 0 : windows[index - 1].toM);
		});
	});
});
