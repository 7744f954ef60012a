import { expect, test } from 'vitest';
import { watchedExposure } from '$lib/reliability/watchedHistory';
import type { BuildEvidence } from '$lib/server/evidence/buildEvidence';
import { lifeOfBuild } from '$lib/server/evidence/lifeOfBuild';
import { wheelHistories } from '$lib/server/evidence/wheelHistories';
import { ride, slip } from './rides';

const COUNTING = { unit: 'slips', unreviewed: 'slip' } as const;

function build(rides: BuildEvidence['rides'], wheelIds = [1]): BuildEvidence {
	return {
		buildId: 1,
		build: 'New',
		wheels: wheelIds.map((id) => ({ id, name: `Wheel ${id}`, endM: 500_000 })),
		rides
	};
}

/** ten rides of 50 km, 40 observed, with so many slips on each */
const lived = (counts: readonly number[]) =>
	counts.map((count, index) =>
		ride({
			ageFromM: index * 50_000,
			events: Array.from({ length: count }, (_, place) =>
				slip({ startS: 100 + 60 * place, atM: 3_000 + 2_000 * place })
			)
		})
	);

test('A wheel is at risk only where its rides observed something', () => {
	const [history] = wheelHistories(build(lived([1, 0])), COUNTING);
	expect(history.windows).toEqual([
		{ from: 0, to: 40_000 },
		{ from: 50_000, to: 90_000 }
	]);
	expect(history.events).toEqual([3_000]);
});

test('A slip that rounding put beside its stretch is taken to the edge of it', () => {
	const rides = [
		ride({ observed: [{ fromM: 100, toM: 900 }], events: [slip({ atM: 900.4 }), slip({ atM: 0 })] })
	];
	expect(wheelHistories(build(rides), COUNTING)[0].events).toEqual([100, 900]);
});

test('Thousands of short stretches are gathered without changing how much was observed', () => {
	const observed = Array.from({ length: 4_000 }, (_, index) => ({ fromM: index * 12, toM: index * 12 + 7 }));
	const [history] = wheelHistories(build([ride({ observed, events: [slip({ atM: 24_003 })] })]), COUNTING);
	expect(history.windows.length).toBeLessThanOrEqual(500);
	expect(watchedExposure(history)).toBeCloseTo(4_000 * 7, 3);
	expect(Math.abs(history.events[0] - 24_003)).toBeLessThan(48_000 / 500);
});

test('A rate that rises with distance gets worse, one that falls gets better, few slips say nothing', () => {
	expect(lifeOfBuild(build(lived([0, 0, 0, 0, 1, 0, 2, 3, 4, 6])), COUNTING).trend.verdict).toBe('worse');
	expect(lifeOfBuild(build(lived([6, 4, 3, 2, 0, 1, 0, 0, 0, 0])), COUNTING).trend.verdict).toBe('better');
	expect(lifeOfBuild(build(lived([2, 1, 2, 1, 2, 1, 2, 1, 2, 1])), COUNTING).trend.verdict).toBe('not shown');
	expect(lifeOfBuild(build(lived([0, 1, 0, 1])), COUNTING).trend).toMatchObject({
		verdict: 'too few to say',
		slips: 2
	});
});

test('A build without slips or rides has no curve and no trend', () => {
	for (const rides of [lived([0, 0, 0]), []])
		expect(lifeOfBuild(build(rides), COUNTING)).toMatchObject({
			curve: [],
			trend: { verdict: 'too few to say', shape: null, slips: 0 }
		});
});

test('The curve is the mean over the wheels that were observed at that distance', () => {
	const second = ride({ wheelId: 2, ageFromM: 0, events: [] });
	const { curve, wheels } = lifeOfBuild(build([...lived([1, 1]), second], [1, 2]), COUNTING);
	expect(wheels).toBe(2);
	// two wheels were observed at 3 km, one of them only at 53 km
	expect(curve.map(({ value }) => value)).toEqual([0.5, 1.5]);
});

test('Ages that nobody watched are gaps of the curve, short ones between stretches are not', () => {
	const rides = [
		ride({ ageFromM: 0, observed: [{ fromM: 0, toM: 40_000 }] }),
		ride({ ageFromM: 300_000, observed: [{ fromM: 0, toM: 20_000 }] }),
		ride({ ageFromM: 321_000, observed: [{ fromM: 0, toM: 29_000 }] })
	];
	expect(lifeOfBuild(build(rides), COUNTING).gaps).toEqual([
		{ fromM: 40_000, toM: 300_000 },
		{ fromM: 350_000, toM: 500_000 }
	]);
	// a second wheel that was watched in between closes the gap
	const second = ride({
		wheelId: 2,
		ageFromM: 40_000,
		totalM: 460_000,
		observed: [{ fromM: 0, toM: 460_000 }]
	});
	expect(lifeOfBuild(build([...rides, second], [1, 2]), COUNTING).gaps).toEqual([]);
});
