import { expect, it } from 'vitest';
import { evidenceOfRides } from '$lib/server/evidence/evidenceRides';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../testLedger';

it('evidenceOfRides tells the same of rides however many are read together, ride by ride its own', async () => {
	const test = freshLedger();
	withHardware(test);
	const ids: number[] = [];
	for (const n of [0, 1, 2, 3, 4])
		ids.push(
			await addRide(test, {
				startedAtMs: START_MS + n * 5 * HOUR_MS,
				events: [slipAt(100 + n), slipAt(900 + n, { kind: 'failed pick-up' })],
				// none, one, two ... of them
				observed: Array.from({ length: n }, (_, i) => ({
					startS: i * 100,
					endS: i * 100 + 50,
					startM: i * 1000 + n / 3,
					endM: i * 1000 + 500 + n / 7
				}))
			})
		);
	// a number that is no ride is told nothing of
	const asked = [...ids].reverse().concat(999);
	const together = evidenceOfRides(test.ledger, asked);
	expect([...together.keys()]).toEqual(asked);
	for (const atATime of [1, 2, 3]) expect(evidenceOfRides(test.ledger, asked, atATime)).toEqual(together);
	ids.forEach((id, n) => {
		const { observed, events, failedPickUps } = together.get(id)!;
		expect(observed).toEqual(
			Array.from({ length: n }, (_, i) => ({ fromM: i * 1000 + n / 3, toM: i * 1000 + 500 + n / 7 }))
		);
		expect(events.map(({ startS }) => startS)).toEqual([100 + n]);
		expect(failedPickUps).toEqual([900 + n]);
	});
	expect(together.get(999)).toEqual({
		cells: [],
		hours: [],
		observed: [],
		events: [],
		failedPickUps: [],
		temperatureC: null
	});
});
