import { expect, test } from 'vitest';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import type { BuildEvidence, EvidenceRide } from '$lib/server/evidence/buildEvidence';
import { dependsOn, type FactorName } from '$lib/server/evidence/dependsOn';
import { cell, ride, slip } from './rides';

const COUNTING = { unit: 'slips', unreviewed: 'slip' } as const;
const build = (rides: EvidenceRide[]): BuildEvidence => ({
	buildId: 1,
	build: 'Old',
	wheels: [{ id: 1, name: 'Wheel 1', endM: 500_000 }],
	rides
});
const factor = (told: ReturnType<typeof dependsOn>, name: FactorName) =>
	told.factors.find((one) => one.factor === name)!;

/** 60 rides, half of them wet, two riders; slips drawn at a rate that the circumstances decide */
function drawn(rateOf: (torqueBin: number, wet: boolean) => number, seed = 7): BuildEvidence {
	const draw = randomNumbers(seed);
	return build(
		Array.from({ length: 60 }, (_, index) => {
			const wet = draw.next() < 0.5;
			const cells = [cell(1, 15_000), cell(4, 15_000), cell(7, 8_000)];
			const events = cells.flatMap(({ torqueBin, observedM }) =>
				Array.from({ length: draw.poisson((rateOf(torqueBin, wet) * observedM) / 100_000) }, (_, place) =>
					// 25 of 40 observed km lie in the first hour
					slip({
						torqueBin,
						startS: (draw.next() < 25 / 40 ? 0 : 3600) + 30 * place,
						atM: 1_000 + 500 * place
					})
				)
			);
			return ride({
				wet,
				riderId: 1 + (index % 2),
				riderCode: `R${1 + (index % 2)}`,
				ageFromM: (index % 20) * 20_000,
				cells,
				events
			});
		})
	);
}

test('A rate that grows with torque is told as such, and what does not matter is not', () => {
	// doubles for each 10 Nm: middles of the bins are 6, 18 and 35 Nm
	const told = dependsOn(
		drawn((bin) => ({ 1: 1, 4: 2.3, 7: 7.5 })[bin] ?? 0),
		COUNTING
	);
	const torque = factor(told, 'hub torque');
	expect(torque.kind).toBe('fit');
	expect(torque.lower!).toBeGreaterThan(1);
	expect(torque.lower!).toBeLessThan(2);
	expect(torque.upper!).toBeGreaterThan(2);
	expect(torque.pValue!).toBeLessThan(0.05);
	expect(factor(told, 'wet').pValue!).toBeGreaterThan(0.05);
});

test('Where nothing matters, hardly a programme shows an influence, however many questions are asked', () => {
	let shown = 0;
	for (let seed = 1; seed <= 60; seed++) {
		const { factors } = dependsOn(
			drawn(() => 4, seed),
			COUNTING
		);
		if (factors.some(({ pValue }) => pValue !== null && pValue < 0.05)) shown++;
	}
	// at most 5 % are wanted, 3 of 60; 8 or more would come once in a hundred times
	expect(shown).toBeLessThan(8);
});

test('What never changed is named, not estimated', () => {
	const rides = Array.from({ length: 20 }, (_, index) =>
		ride({ ageFromM: index * 40_000, events: [slip({ startS: 100 }), slip({ startS: 900 })] })
	);
	const told = dependsOn(build(rides), COUNTING);
	expect(factor(told, 'hub torque').kind).toBe('constant');
	expect(factor(told, 'wet').kind).toBe('constant');
	expect(told.referenceRider).toBe('R1');
	expect(told.factors.some(({ rider }) => rider !== null)).toBe(false);
});

test('Few slips are too few, and a build without rides says nothing', () => {
	const few = dependsOn(
		drawn(() => 0.15),
		COUNTING
	);
	expect(few.slips).toBeLessThan(10);
	expect(few.factors.every(({ kind }) => kind !== 'fit')).toBe(true);
	const none = dependsOn(build([]), COUNTING);
	expect(none).toMatchObject({ slips: 0, referenceRider: null, wetNotSaidShare: 0 });
	expect(none.factors.every(({ kind }) => kind === 'too few')).toBe(true);
});

test('How much was ridden of which nobody said wet or dry is told', () => {
	const told = dependsOn(build([ride({ wet: null }), ride({ wet: true }), ride({ wet: false })]), COUNTING);
	expect(told.wetNotSaidShare).toBeCloseTo(1 / 3, 9);
});

test("The device's temperature is asked about where rides recorded it, and only there", () => {
	const base = drawn(() => 4);
	const told = (temperatureOf: (index: number) => number | null, rateOf?: (index: number) => number) =>
		dependsOn(
			build(
				base.rides.map((one, index) => ({
					...one,
					temperatureC: temperatureOf(index),
					events: rateOf
						? Array.from({ length: rateOf(index) }, (_, place) =>
								slip({
									torqueBin: [1, 4, 7][(index + place) % 3],
									startS: 60 * place,
									atM: 1_000 + 500 * place
								})
							)
						: one.events
				}))
			),
			COUNTING
		);
	expect(
		factor(
			told(() => null),
			'device temperature'
		)
	).toMatchObject({ kind: 'not recorded', ratio: null });
	expect(
		factor(
			told((index) => (index < 20 ? 5 : null)),
			'device temperature'
		).kind
	).toBe('not recorded');
	// six slips on each cold ride, two on each warm one, ten degrees apart
	const cold = told(
		(index) => (Math.floor(index / 2) % 2 ? 15 : 5),
		(index) => (Math.floor(index / 2) % 2 ? 2 : 6)
	);
	const temperature = factor(cold, 'device temperature');
	expect(temperature.kind).toBe('fit');
	expect(temperature.ratio!).toBeGreaterThan(0.2);
	expect(temperature.upper!).toBeLessThan(0.6);
	expect(temperature.pValue!).toBeLessThan(0.05);
	expect(cold.temperatureShare).toBe(1);
});

test('Slips that go along with picking up are told as such, riders and roads being mixed', () => {
	const base = drawn(() => 3);
	// rides with many pick-ups: four slips more in every second of them
	const rides = base.rides.map((one, index) => {
		const often = Math.floor(index / 2) % 2 === 1;
		return {
			...one,
			cells: one.cells.map((told, place) => ({
				...told,
				observedPickUps: place === 0 ? (often ? 120 : 20) : 0
			})),
			events: often
				? [
						...one.events,
						...[0, 1, 2, 3].map((place) =>
							slip({ torqueBin: [1, 4, 7, 1][place], startS: 4000 + 60 * place })
						)
					]
				: one.events
		};
	});
	const told = factor(dependsOn(build(rides), COUNTING), 'picking up');
	expect(told.kind).toBe('fit');
	expect(told.lower!).toBeGreaterThan(1);
	expect(told.pValue!).toBeLessThan(0.05);
	expect(factor(dependsOn(base, COUNTING), 'picking up').kind).toBe('constant');
});

test('A single slip lies on one side of everything, which is no finding: too few to say', () => {
	const rides = drawn(() => 0).rides.map((one, index) =>
		index === 7 ? { ...one, events: [slip({ torqueBin: 7 })] } : one
	);
	const { factors } = dependsOn(build(rides), COUNTING);
	expect(factors.map(({ kind }) => kind)).not.toContain('unbounded');
	expect(factor({ factors } as ReturnType<typeof dependsOn>, 'hub torque').kind).toBe('too few');
});

test('Eight slips for as many questions leave none of them one-sided: too few to say', () => {
	const rides = drawn(() => 0).rides.map((one, index) =>
		index % 15 < 2 && index < 60 ? { ...one, events: [slip({ torqueBin: index % 2 ? 7 : 4 })] } : one
	);
	const { factors, slips } = dependsOn(build(rides), COUNTING);
	expect(slips).toBe(8);
	expect(factors.map(({ kind }) => kind)).not.toContain('unbounded');
});
