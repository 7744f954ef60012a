import { describe, expect, it } from 'vitest';
import { comparison, programmeRows, rideView, withdrawRide } from '$lib/server';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from './testLedger';

describe('the age of a build', () => {
	it('ends in the same sums whatever the order in which rides arrive', async () => {
		const rides = [0, 1, 2, 3, 4].map((day) => ({
			startedAtMs: START_MS + day * 24 * HOUR_MS,
			totalM: 10_000 + 1000 * day,
			events: [slipAt(50 + day)]
		}));
		const linesOf = async (order: number[]) => {
			const test = freshLedger();
			const { buildId } = withHardware(test);
			for (const day of order) await addRide(test, rides[day]);
			const [line] = comparison(test.ledger, [buildId]).lines;
			return {
				endM: line.endM,
				windows: line.rides.map(({ fromM, toM }) => [fromM, toM]),
				slips: line.slips.map(({ atM, count }) => [atM, count]),
				observed: line.observed
			};
		};
		const inOrder = await linesOf([0, 1, 2, 3, 4]);
		expect(inOrder.endM).toBe(60_000);
		expect(inOrder.slips[1]).toEqual([10_000 + 51 * 8, 2]);
		expect(await linesOf([4, 2, 0, 3, 1])).toEqual(inOrder);
		expect(await linesOf([1, 0, 4, 3, 2])).toEqual(inOrder);
	});

	it('grows with rides that count in no rate, and with none that was not ridden on the road', async () => {
		const test = freshLedger();
		const { buildId } = withHardware(test);
		const day = (number: number) => ({ startedAtMs: START_MS + number * 24 * HOUR_MS });
		await addRide(test, { ...day(0), totalM: 1000, motorAssisted: true, events: [slipAt(9)] });
		await addRide(test, { ...day(1), totalM: 2000, observedM: 0, observed: [] });
		await addRide(test, { ...day(2), totalM: 4000, trainer: true });
		const withdrawn = await addRide(test, { ...day(3), totalM: 8000 });
		withdrawRide(test.ledger, test.actor, withdrawn, 'another bicycle');
		await addRide(test, { ...day(1), totalM: 16_000 });
		const last = await addRide(test, { ...day(5), totalM: 32_000, events: [slipAt(100)] });

		const [line] = comparison(test.ledger, [buildId]).lines;
		expect(line.endM).toBe(1000 + 2000 + 32_000);
		expect(line.rides.map(({ fromM, toM }) => [fromM, toM])).toEqual([
			[0, 1000],
			[1000, 3000],
			[3000, 35_000]
		]);
		// what is observed and found on the motor-assisted ride stays out
		expect(line.observed).toEqual([{ fromM: 3000, toM: 23_000 }]);
		expect(line.slips.map(({ atM }) => atM)).toEqual([3800]);
		expect(rideView(test.ledger, last)!.eventList[0].buildDistanceM).toBe(3800);
		expect(programmeRows(test.ledger)[0]).toMatchObject({ rides: 2, totalM: 34_000 });
	});

	it('is not drawn while no ride counts', async () => {
		const test = freshLedger();
		const { buildId } = withHardware(test);
		await addRide(test, { motorAssisted: true });
		expect(comparison(test.ledger, [buildId]).lines).toEqual([]);
	});
});
