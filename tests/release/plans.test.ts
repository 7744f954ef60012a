import { expect, test } from 'vitest';
import { sequentialPlanRisks } from '$lib/reliability/sequentialPlanRisks';
import { criteriaProblems } from '$lib/release/criteriaProblems';
import { planDistance } from '$lib/release/planDistance';
import { releaseState } from '$lib/release/releaseState';
import { planLines, sequentialCourse } from '$lib/release/sequentialCourse';
import { sequentialPlanState } from '$lib/release/sequentialPlanState';
import { CRITERIA, GOOD, WORDS } from './testWords';

const PLAN = {
	kind: 'sequential',
	goodPerThousandKm: 1,
	riskOfFailingGood: 0.1,
	longestObservedM: 9_000_000
} as const;
const SEQUENTIAL = { ...CRITERIA, rateAtMostPerThousandKm: 3, confidence: 0.9, plan: PLAN };
const KM = 1000;

test('300 km without a slip bound the rate at 10 per 1000 km, and the planner says so', () => {
	// NIST/SEMATECH e-Handbook 8.3.1.1: 2.996 / 10 per 1000 km = 299.6 km
	const answer = planDistance({
		rateAtMostPerThousandKm: 10,
		confidence: 0.95,
		slipsAllowed: 0,
		wheels: 2,
		observedMPerWeek: 100 * KM,
		observedShare: 0.6,
		slipsBehindOne: 1.25
	});
	expect(answer.observedM / KM).toBeCloseTo(299.6, 1);
	expect(answer.observedMPerWheel).toBeCloseTo(answer.observedM / 2, 6);
	expect(answer.riddenM! / KM).toBeCloseTo(499.3, 1);
	// a rate of 8 found per 1000 km is one of 10 where 1.25 stand for each: 2.996 / 8 per 1000 km
	expect(answer.observedMWithNotFound! / KM).toBeCloseTo(374.5, 1);
	expect(answer.weeks).toBeCloseTo(2.996, 3);
	const chance = (times: number) => answer.passes.find(({ timesTheRate }) => timesTheRate === times)!.chance;
	// a build at the very rate passes by chance as often as the confidence leaves; a tenth of it: exp(-0.2996)
	expect(chance(1)).toBeCloseTo(0.05, 6);
	expect(chance(0.1)).toBeCloseTo(0.7411, 4);
});

test('Weeks and ridden distance are not made up where pace or share are not known', () => {
	const answer = planDistance({
		rateAtMostPerThousandKm: 10,
		confidence: 0.95,
		slipsAllowed: 0,
		wheels: 1,
		observedMPerWeek: 0,
		observedShare: 0,
		slipsBehindOne: null
	});
	expect(answer).toMatchObject({ weeks: null, riddenM: null, observedMWithNotFound: null });
});

test('A sequential plan passes without a slip at the distance of its lower line', () => {
	// Wald 1947 for 1 against 3 per 1000 km, both risks 10 %: slope 2 / ln 3 = 1.820, intercepts -2 and 2, so
	// without a slip it would pass at 1.0986 thousand km; lines that keep the true risks lie a little further out
	const lines = planLines(SEQUENTIAL, PLAN)!;
	expect(lines.slope).toBeCloseTo(2 / Math.log(3), 9);
	const passesAtM = sequentialCourse(lines, [], 0).passesAtM!;
	expect(passesAtM / 1e6).toBeGreaterThanOrEqual(1.0986);
	expect(passesAtM / 1e6).toBeLessThan(1.4);
	expect(sequentialCourse(lines, [], passesAtM - 1).state).toBe('continue');
	expect(sequentialCourse(lines, [], passesAtM)).toMatchObject({ state: 'pass', endedAtM: passesAtM });
});

test('The true risks of the plan are at most those asked for', () => {
	const lines = planLines(SEQUENTIAL, PLAN)!;
	expect(sequentialPlanRisks(lines, 3).pass).toBeLessThanOrEqual(0.1);
	expect(sequentialPlanRisks(lines, 1).fail).toBeLessThanOrEqual(0.1);
});

test('A plan too short to keep both risks is refused before the test', () => {
	const plan = { ...PLAN, longestObservedM: 900_000 };
	expect(criteriaProblems({ ...SEQUENTIAL, plan })).toEqual([
		expect.stringContaining('No plan of this length')
	]);
	expect(criteriaProblems(SEQUENTIAL)).toEqual([]);
});

test('Slips at once fail it, and later kilometres do not save it', () => {
	const lines = planLines(SEQUENTIAL, PLAN)!;
	const slips = [10 * KM, 20 * KM, 30 * KM, 35 * KM];
	expect(sequentialCourse(lines, slips, 40 * KM)).toMatchObject({ state: 'fail' });
	expect(sequentialCourse(lines, slips.slice(0, 1), 40 * KM).state).toBe('continue');
	expect(sequentialCourse(lines, slips, 8_000_000).state).toBe('fail');
});

test('A slip after it has passed does not reopen it', () => {
	const lines = planLines(SEQUENTIAL, PLAN)!;
	expect(sequentialCourse(lines, [2_000_000, 2_100_000, 2_200_000], 3_000_000).state).toBe('pass');
});

test('Unreviewed events that would make it fail ask for review first', () => {
	const wheels = [{ name: 'Wheel 1', observedM: 40 * KM }];
	const slipsAtObservedM = [10 * KM, 20 * KM, 30 * KM, 35 * KM];
	const state = (confirmedAtObservedM: number[], unreviewed: number) =>
		sequentialPlanState(
			SEQUENTIAL,
			PLAN,
			{ wheels, slipsAtObservedM, confirmedAtObservedM, unreviewed },
			WORDS
		);
	expect(state([10 * KM], 2)).toMatchObject({
		state: 'not yet',
		stillTakes: expect.stringContaining('Review of 2')
	});
	expect(state(slipsAtObservedM, 0).state).toBe('fails');
});

test('A build with everything shown may be signed; one criterion that does not hold is enough to wait', () => {
	expect(releaseState(CRITERIA, GOOD, WORDS)).toMatchObject({ state: 'all hold' });
	expect(releaseState(CRITERIA, GOOD, WORDS).criteria).toHaveLength(15);
	expect(releaseState(CRITERIA, { ...GOOD, unreviewed: 1 }, WORDS).state).toBe('not yet');
	expect(releaseState(CRITERIA, { ...GOOD, confirmed: 1 }, WORDS).state).toBe('stopped');
	expect(releaseState(CRITERIA, { ...GOOD, injuries: 1 }, WORDS).state).toBe('stopped');
	const unasked = { ...CRITERIA, expectedRatioAtMost: null, plannedLifeM: null };
	expect(releaseState(unasked, GOOD, WORDS).criteria).toHaveLength(13);
});
