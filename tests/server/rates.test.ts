import { describe, expect, it } from 'vitest';
import { comparison, createBuild, fitBuild, programmeRows, recordVerdict, rideView } from '$lib/server';
import { countView, rateView } from '$lib/server/rates/countView';
import { NO_EVENTS } from '$lib/server/rates/eventTallies';
import { rideSummary } from '$lib/server/rides/rideSummary';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware, type TestLedger } from './testLedger';

describe('rateView', () => {
	it('gives slips per 100 observed km with exact limits', () => {
		// Garwood 1936: 0 events up to 3.689, 10 events 4.795 to 18.390 at 95 %
		const none = rateView(0, 200_000);
		expect(none).toMatchObject({ count: 0, ratePerHundredKm: 0, lowerPerHundredKm: 0 });
		expect(none.upperPerHundredKm).toBeCloseTo(3.689 / 2, 3);
		const ten = rateView(10, 100_000);
		expect(ten.lowerPerHundredKm).toBeCloseTo(4.795, 3);
		expect(ten.upperPerHundredKm).toBeCloseTo(18.39, 2);
	});

	it('gives no rate and no bound while nothing was observed', () => {
		expect(rateView(0, 0)).toMatchObject({ ratePerHundredKm: null, upperPerHundredKm: null });
	});
});

describe('countView', () => {
	it('adds the tallies up and takes unreviewed events for none in the best and for slips in the worst case', () => {
		const view = countView(
			[
				{ confirmed: 2, unreviewed: 3, rejected: 1, apart: 4, withoutVerdict: 5 },
				NO_EVENTS,
				{ confirmed: 1, unreviewed: 0, rejected: 0, apart: 0, withoutVerdict: 0 }
			].map((tally, place) => ({ tally, observedM: [30_000, 15_000, 5_000][place] }))
		);
		expect(view).toMatchObject({ confirmed: 3, unreviewed: 3, rejected: 1, apart: 4 });
		expect([view.bestCase.count, view.worstCase.count]).toEqual([3, 6]);
		expect(view.bestCase.observedM).toBeCloseTo(50_000, 6);
		expect(view.bestCase.ratePerHundredKm).toBeCloseTo(6, 9);
		expect(view.worstCase.ratePerHundredKm).toBeCloseTo(12, 9);
	});

	it('gives wider limits than for single slips when they came in one ride', () => {
		const tally = (confirmed: number) => ({ ...NO_EVENTS, confirmed });
		const of = (counts: number[]) =>
			countView(counts.map((count) => ({ tally: tally(count), observedM: 40_000 }))).worstCase;
		const spread = of([2, 2, 2, 2, 2, 2, 2, 2, 2, 2]);
		const burst = of([20, 0, 0, 0, 0, 0, 0, 0, 0, 0]);
		expect(burst.ratePerHundredKm).toBe(spread.ratePerHundredKm);
		expect(burst.upperPerHundredKm!).toBeGreaterThan(1.5 * spread.upperPerHundredKm!);
		expect(burst.decidedBy).not.toBe('single');
	});
});

describe('the rate of a build', () => {
	it('counts only slips of the reference size that begin on observed stretches', async () => {
		const test = freshLedger();
		withHardware(test);
		const degrees = (value: number) => ({ overrunCrankDeg: { value, lower: value - 9, upper: value + 9 } });
		await addRide(test, {
			events: [
				slipAt(10, degrees(90)),
				slipAt(20, degrees(89.9)),
				slipAt(30, { observed: false }),
				slipAt(40, { kind: 'failed pick-up' }),
				slipAt(50, { kind: 'possible chain skip' })
			]
		});
		expect(programmeRows(test.ledger)[0]).toMatchObject({
			rides: 1,
			totalM: 30_000,
			observedM: 20_000,
			drivenM: 25_000,
			counted: { unreviewed: 1, apart: 4, worstCase: { count: 1, observedM: 20_000 } }
		});
	});

	it('stays out of the rate for a confirmed event that is smaller', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, {
			events: [slipAt(20, { overrunCrankDeg: { value: 60, lower: 50, upper: 70 } })]
		});
		const [event] = rideView(test.ledger, rideId)!.eventList;
		recordVerdict(test.ledger, test.actor, event.id, { verdict: 'confirmed' });
		expect(programmeRows(test.ledger)[0].counted).toMatchObject({ confirmed: 0, apart: 1 });
	});
});

async function twoBuilds(): Promise<TestLedger & { oldId: number; newId: number }> {
	const test = freshLedger();
	const { wheelId, buildId: oldId } = withHardware(test);
	const newId = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
	const from = new Date(START_MS + 12 * HOUR_MS).toISOString();
	fitBuild(test.ledger, test.actor, { wheelId, buildId: newId, from });
	await addRide(test, { events: [100, 200, 300, 400, 500, 600, 700, 800].map((s) => slipAt(s)) });
	await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS, events: [slipAt(100)] });
	return { ...test, oldId, newId };
}

describe('comparison', () => {
	it('draws each build on its wheel over the distance since it was fitted', async () => {
		const { ledger, oldId, newId } = await twoBuilds();
		const { lines, builds } = comparison(ledger, [oldId, newId, oldId]);
		expect(builds.map(({ name }) => name)).toEqual(['Old', 'New']);
		expect(lines).toMatchObject([
			{ build: 'Old', wheel: 'Wheel A', endM: 30_000, observed: [{ fromM: 0, toM: 20_000 }] },
			{ build: 'New', endM: 30_000, slips: [{ atM: 800, count: 1, confirmed: false }] }
		]);
		expect(lines[0].slips.map(({ count }) => count)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
	});

	it('takes a rejected event out of the lines at once', async () => {
		const { ledger, actor, oldId, newId } = await twoBuilds();
		const { eventId } = comparison(ledger, [newId]).lines[0].slips[0];
		recordVerdict(ledger, actor, eventId, { verdict: 'rejected', reason: 'sensor' });
		expect(comparison(ledger, [oldId, newId]).lines[1].slips).toEqual([]);
	});

	it('refuses a build that does not exist', () => {
		expect(() => comparison(freshLedger().ledger, [7])).toThrow('no such build');
	});
});

describe('rideSummary', () => {
	const event = (change: object = {}) => ({ ...slipAt(1), verdict: null, ...change });
	const summary = (eventList: object[], observedM = 6100) =>
		rideSummary({
			analysed: true,
			totalM: 10_000,
			observedM,
			eventList: eventList as Parameters<typeof rideSummary>[0]['eventList']
		});

	it('never says a bare "no slips"', () => {
		expect(summary([])).toBe(
			'No slip of the reference size was found on the 61 % of this ride that could have shown one.'
		);
	});

	it('says that a ride which could show nothing says nothing', () => {
		expect(summary([], 0)).toContain('it says nothing about slips');
		expect(summary([], 9999)).toContain('more than 99 %');
		expect(summary([], 1)).toContain('less than 1 %');
	});

	it('counts what stands, and names what lies apart', () => {
		const confirmed = event({ verdict: { verdict: 'confirmed' } });
		expect(summary([event()])).toContain('1 event of the reference size or more was found');
		expect(summary([confirmed, event()])).toContain('2 events of the reference size or more were found');
		expect(summary([confirmed, confirmed])).toContain('2 slips of the reference size or more were found');
		expect(summary([confirmed, event()])).toContain('1 confirmed, 1 not reviewed yet');
		expect(summary([event({ observed: false })])).toContain('One further event is smaller');
	});

	it('mentions what was rejected', () => {
		expect(summary([event({ verdict: { verdict: 'rejected' } })])).toContain('(1 rejected in review)');
	});
});
