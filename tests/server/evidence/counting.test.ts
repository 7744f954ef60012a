import { expect, test } from 'vitest';
import { ratesOverAge, ratesOverHours, ratesOverTorque } from '$lib/server/evidence/binnedRates';
import { countedSlips } from '$lib/server/evidence/countedSlips';
import { strata } from '$lib/server/evidence/strata';
import { cell, ride, slip } from './rides';

const SLIPS = { unit: 'slips', unreviewed: 'slip' } as const;

test('Slips less than 10 s apart are one episode, each gap taken from the end of the one before', () => {
	const events = [100, 108, 118.5, 140].map((startS) => slip({ startS, endS: startS + 1 }));
	expect(countedSlips(events, 'episodes', 'slip').map(({ startS }) => startS)).toEqual([100, 140]);
	expect(countedSlips(events, 'slips', 'slip')).toHaveLength(4);
});

test('A rejected event neither counts nor joins two slips to one episode', () => {
	const events = [
		slip({ startS: 100, standing: 'confirmed' }),
		slip({ startS: 106, standing: 'rejected' }),
		slip({ startS: 112, standing: 'confirmed' })
	];
	expect(countedSlips(events, 'episodes', 'slip').map(({ startS }) => startS)).toEqual([100, 112]);
});

test('What nobody has reviewed counts as the case says', () => {
	const events = [slip({ standing: 'unreviewed' }), slip({ startS: 500, standing: 'confirmed' })];
	expect(countedSlips(events, 'slips', 'slip')).toHaveLength(2);
	expect(countedSlips(events, 'slips', 'none')).toHaveLength(1);
	// an episode that begins with an event of no count begins later
	const close = [slip({ startS: 100 }), slip({ startS: 104, standing: 'confirmed' })];
	expect(countedSlips(close, 'episodes', 'none').map(({ startS }) => startS)).toEqual([104]);
});

test('Slip frequency over kilometres divides a stretch at the edges of its bins', () => {
	const rides = [
		ride({ ageFromM: 80_000, observed: [{ fromM: 10_000, toM: 40_000 }], events: [slip({ atM: 25_000 })] })
	];
	const bins = ratesOverAge(rides, 100_000, SLIPS);
	expect(bins.map(({ from, rate }) => [from, rate.count, rate.observedM])).toEqual([
		[0, 0, 10_000],
		[100_000, 1, 20_000]
	]);
	expect(bins[1].rate.ratePerHundredKm).toBeCloseTo(5, 9);
});

test('A bin that nobody observed has no rate', () => {
	const [first, second, third] = ratesOverAge([ride({}), ride({ ageFromM: 200_000 })], 100_000, SLIPS);
	expect(first.rate.observedM).toBe(40_000);
	expect(second.rate).toMatchObject({ observedM: 0, ratePerHundredKm: null, upperPerHundredKm: null });
	expect(third.rate.observedM).toBe(40_000);
});

test('Torque that is not known stands last and by itself', () => {
	const rates = ratesOverTorque(
		[ride({ cells: [cell(5, 30_000), cell(-1, 10_000)], events: [slip({ torqueBin: -1 })] })],
		SLIPS
	);
	expect(rates).toHaveLength(11);
	expect(rates[5]).toMatchObject({ from: 20, to: 25, rate: { count: 0, observedM: 30_000 } });
	expect(rates[10]).toMatchObject({ from: null, to: null, rate: { count: 1, observedM: 10_000 } });
});

test('Hours of the ride are filed by the clock', () => {
	const rates = ratesOverHours([ride({ events: [slip({ startS: 3600 }), slip({ startS: 3599 })] })], SLIPS);
	expect(rates.map(({ rate }) => [rate.count, rate.observedM])).toEqual([
		[1, 25_000],
		[1, 15_000]
	]);
});

test('Strata hold all slips and all observed distance, each at its torque and age', () => {
	const rides = [
		// over the edge at 100 km: 20 of 40 observed km on either side
		ride({
			ageFromM: 80_000,
			cells: [cell(5, 30_000), cell(7, 10_000)],
			events: [slip({ atM: 5_000 }), slip({ startS: 900, atM: 30_000, torqueBin: 7 })]
		}),
		ride({ ageFromM: 130_000, cells: [cell(-1, 40_000)] })
	];
	expect(strata(rides, 'slips', 'slip')).toEqual([
		{ torqueGroup: -1, ageGroup: 1, slips: 0, observedM: 40_000 },
		{ torqueGroup: 2, ageGroup: 0, slips: 1, observedM: 15_000 },
		{ torqueGroup: 2, ageGroup: 1, slips: 0, observedM: 15_000 },
		{ torqueGroup: 3, ageGroup: 0, slips: 0, observedM: 5_000 },
		{ torqueGroup: 3, ageGroup: 1, slips: 1, observedM: 5_000 }
	]);
});

test('A rejected event leaves every table at once', () => {
	const rides = [ride({ events: [slip({ standing: 'rejected' })] })];
	expect(strata(rides, 'slips', 'slip').reduce((sum, { slips }) => sum + slips, 0)).toBe(0);
	for (const rates of [
		ratesOverAge(rides, 100_000, SLIPS),
		ratesOverTorque(rides, SLIPS),
		ratesOverHours(rides, SLIPS)
	])
		expect(rates.reduce((sum, { rate }) => sum + rate.count, 0)).toBe(0);
});
