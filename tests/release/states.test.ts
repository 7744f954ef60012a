import { expect, test } from 'vitest';
import { benchCheckState } from '$lib/release/benchCheckState';
import { buildSheetState } from '$lib/release/buildSheetState';
import { designState } from '$lib/release/designState';
import { expectedState } from '$lib/release/expectedState';
import { fixedPlanState } from '$lib/release/fixedPlanState';
import { hardTorqueState } from '$lib/release/hardTorqueState';
import { incidentsState } from '$lib/release/incidentsState';
import { lastThirdState } from '$lib/release/lastThirdState';
import { notFoundState } from '$lib/release/notFoundState';
import { reviewState } from '$lib/release/reviewState';
import { ridersState } from '$lib/release/ridersState';
import { stopRuleState } from '$lib/release/stopRuleState';
import { wearState } from '$lib/release/wearState';
import { wetAndDryState } from '$lib/release/wetAndDryState';
import { wheelsState } from '$lib/release/wheelsState';
import { CRITERIA, GOOD, WORDS } from './testWords';

const PLAN = { kind: 'fixed', observedMPerWheel: 500_000, slipsAllowed: 1 } as const;

test('A fixed plan holds once every wheel has its distance and no more slips count than allowed', () => {
	expect(fixedPlanState(CRITERIA, PLAN, { ...GOOD, confirmed: 1, slipsAtObservedM: [9] }, WORDS).state).toBe(
		'holds'
	);
});

test('One wheel that runs far does not stand in for another that did not', () => {
	const wheels = [
		{ name: 'Wheel 1', observedM: 2_000_000 },
		{ name: 'Wheel 2', observedM: 500_000 },
		{ name: 'Wheel 3', observedM: 100_000 }
	];
	const rate = fixedPlanState(CRITERIA, PLAN, { ...GOOD, wheels }, WORDS);
	expect(rate).toMatchObject({ state: 'not yet', stillTakes: expect.stringContaining('400 km') });
	const enough = wheelsState({ ...CRITERIA, plan: PLAN }, { wheels }, WORDS);
	expect(enough).toMatchObject({ state: 'not yet', stillTakes: '400 km on Wheel 3.' });
});

test('More confirmed slips than allowed fail the plan for good', () => {
	expect(fixedPlanState(CRITERIA, PLAN, { ...GOOD, confirmed: 2 }, WORDS)).toMatchObject({
		state: 'fails',
		stillTakes: null
	});
});

test('Events that nobody has reviewed count as slips until somebody does', () => {
	const state = fixedPlanState(
		CRITERIA,
		PLAN,
		{ ...GOOD, confirmed: 1, unreviewed: 1, slipsAtObservedM: [9, 99] },
		WORDS
	);
	expect(state).toMatchObject({
		state: 'not yet',
		sentence: expect.stringContaining('2 events count, 1 of them not reviewed'),
		stillTakes: expect.stringContaining('Review of 1')
	});
});

test('A wheel of the plan that does not exist yet is said', () => {
	const state = wheelsState({ ...CRITERIA, plan: PLAN }, { wheels: GOOD.wheels.slice(0, 2) }, WORDS);
	expect(state.stillTakes).toBe('1 more wheel of this build.');
	expect(wheelsState({ ...CRITERIA, plan: PLAN }, { wheels: [] }, WORDS).sentence).toContain(
		'none has it yet'
	);
});

test('Riders are counted, not rides', () => {
	expect(ridersState(CRITERIA, { riders: 2 }, WORDS).state).toBe('holds');
	expect(ridersState(CRITERIA, { riders: 1 }, WORDS).stillTakes).toContain('1 more rider');
});

test('Counted against expected needs an upper limit under the share and enough comparable distance', () => {
	const at = (ratioUpper: number, comparableShare: number) =>
		expectedState(CRITERIA, { expected: { ratioUpper, confidence: 0.95, comparableShare } }, WORDS);
	expect(at(0.2, 0.5)?.state).toBe('holds');
	expect(at(0.21, 0.5)?.state).toBe('not yet');
	expect(at(0.1, 0.49)?.state).toBe('not yet');
	expect(at(Infinity, 1)).toMatchObject({
		state: 'not yet',
		sentence: expect.stringContaining('no confirmed slip of the old build lies there'),
		stillTakes: expect.stringContaining('Review of the events of the old build')
	});
	expect(expectedState(CRITERIA, { expected: null }, WORDS)?.state).toBe('not yet');
	expect(expectedState({ expectedRatioAtMost: null }, { expected: null }, WORDS)).toBeNull();
});

test('Kilometres above the old slip torque are asked for where nobody is thrown', () => {
	const state = hardTorqueState(CRITERIA, { observedMAboveHardTorque: 4_000 }, WORDS);
	expect(state?.state).toBe('not yet');
	expect(state?.stillTakes).toMatch(/^16 km above 30 Nm.*never by provoking/);
	expect(hardTorqueState(CRITERIA, { observedMAboveHardTorque: 20_000 }, WORDS)?.state).toBe('holds');
});

test('Dry kilometres do not make up for wet ones', () => {
	const state = wetAndDryState(CRITERIA, { observedMWet: 40_000, observedMDry: 9e6 }, WORDS);
	expect(state).toMatchObject({ state: 'not yet', stillTakes: expect.stringContaining('60 km wet') });
	expect(state?.stillTakes).not.toContain('dry or');
});

test('What was not asked for is no criterion that holds', () => {
	const nothing = { observedMAboveHardTorque: 0, observedMWet: 0, observedMDry: 0 };
	expect(wetAndDryState({ ...CRITERIA, ...nothing }, nothing, WORDS)).toBeNull();
	expect(wetAndDryState({ ...CRITERIA, ...nothing, observedMDry: 1 }, nothing, WORDS)?.state).toBe('not yet');
	expect(hardTorqueState({ ...CRITERIA, ...nothing }, nothing, WORDS)).toBeNull();
});

test('A last third too short to say is not one that holds', () => {
	// no slip on 1,000 km bounds the rate at 2.996 per 1000 km
	const short = lastThirdState(
		CRITERIA,
		{ lastThird: { slips: 0, confirmed: 0, observedM: 1_000_000 } },
		WORDS
	);
	expect(short).toMatchObject({ state: 'not yet', sentence: expect.stringContaining('at most 3 per 1000') });
	expect(short.stillTakes).toBe('About 1500 km more observed in all, if nothing more counts.');
	expect(
		lastThirdState(CRITERIA, { lastThird: { slips: 0, confirmed: 0, observedM: 1_500_000 } }, WORDS).state
	).toBe('holds');
	expect(lastThirdState(CRITERIA, { lastThird: { slips: 0, confirmed: 0, observedM: 0 } }, WORDS).state).toBe(
		'not yet'
	);
});

test('Only what was confirmed is called a slip, in every criterion alike', () => {
	const third = (slips: number, confirmed: number) =>
		lastThirdState(CRITERIA, { lastThird: { slips, confirmed, observedM: 500_000 } }, WORDS).sentence;
	expect(third(0, 0)).toContain('no slip counts');
	expect(third(2, 2)).toContain('2 slips count;');
	expect(third(3, 1)).toContain('3 events count, 2 of them not reviewed');
	expect(third(4, 0)).toContain('4 events count, none of them reviewed');
	expect(third(1, 0)).toContain('1 event counts, not reviewed');
	// what is still to come is neither yet
	const toCome = [
		lastThirdState(CRITERIA, { lastThird: { slips: 1, confirmed: 0, observedM: 500_000 } }, WORDS),
		notFoundState(
			CRITERIA,
			{ ...GOOD, notFound: { ridesWaiting: 0, factor: { upper: 9, put: 400, found: 50 } } },
			WORDS
		)
	];
	for (const { stillTakes } of toCome) expect(stillTakes).toMatch(/, if nothing more counts\.$/);
});

test('Distance that wheels still lack is told in the order of their names', () => {
	const wheels = [
		{ name: 'Wheel 10', observedM: 200_000 },
		{ name: 'Wheel 2', observedM: 100_000 },
		{ name: 'Wheel 1', observedM: 50_000 },
		{ name: 'Wheel 3', observedM: 150_000 }
	];
	expect(wheelsState({ ...CRITERIA, plan: PLAN }, { wheels }, WORDS).stillTakes).toBe(
		'400 km on Wheel 2, 350 km on Wheel 3, 300 km on Wheel 10.'
	);
});

test('Slips that the rides would not have shown are added before the rate is kept', () => {
	// no slip on 4,800 km bounds the rate at 2.996 / 4.8 = 0.624 per 1000 km
	const at = (upper: number, rateAtMostPerThousandKm = 2) =>
		notFoundState(
			{ ...CRITERIA, rateAtMostPerThousandKm },
			{ ...GOOD, notFound: { ridesWaiting: 0, factor: { upper, put: 400, found: 340 } } },
			WORDS
		);
	expect(at(1.25)).toMatchObject({
		state: 'holds',
		sentence: expect.stringContaining(
			'340 were found again, so that one found may stand for 1.3: at most 0.78'
		)
	});
	expect(at(3.2).state).toBe('holds');
	expect(at(3.21).state).toBe('not yet');
	// just kept as found; at 1.25 times it takes a quarter more: 4,800 x (0.7801 / 0.6242 - 1)
	expect(at(1.25, 0.6242)).toMatchObject({
		state: 'not yet',
		stillTakes: expect.stringMatching(/^About 1200 km/)
	});
	expect(at(1, 0.6242).state).toBe('holds');
});

test('As long as it is not known how many are found again, nothing holds', () => {
	const at = (notFound: (typeof GOOD)['notFound']) => notFoundState(CRITERIA, { ...GOOD, notFound }, WORDS);
	expect(at({ ridesWaiting: 0, factor: null }).state).toBe('not yet');
	expect(at({ ridesWaiting: 1, factor: GOOD.notFound.factor })).toMatchObject({
		state: 'not yet',
		sentence: expect.stringContaining('still being put into 1 ride')
	});
	const unridden = notFoundState(CRITERIA, { ...GOOD, wheels: [] }, WORDS);
	expect(unridden).toMatchObject({ state: 'not yet', sentence: expect.stringContaining('no bound') });
});

test('Wear may not be able to reach its limit within the planned life, and few points cannot tell', () => {
	const at = (reachesLimitAtLeastM: number | null) =>
		wearState(CRITERIA, { wear: [{ name: 'pawl edge', reachesLimitAtLeastM }] }, WORDS)?.state;
	expect(at(Infinity)).toBe('holds');
	expect(at(8_000_000)).toBe('holds');
	expect(at(7_999_999)).toBe('not yet');
	expect(at(null)).toBe('not yet');
	expect(wearState(CRITERIA, { wear: [] }, WORDS)?.state).toBe('not yet');
	expect(wearState({ plannedLifeM: null }, { wear: [] }, WORDS)).toBeNull();
});

test('A hand-fitted ring or a part without its batch is not what will be produced', () => {
	expect(designState({ design: GOOD.design }).state).toBe('holds');
	const design = { frozen: false, handFittedParts: ['ring R2'], partsWithoutBatch: ['spring S1'] };
	const state = designState({ design });
	expect(state.state).toBe('not yet');
	for (const word of ['Freeze', 'ring R2', 'batch of spring S1']) expect(state.stillTakes).toContain(word);
});

test('A written override lets a test begin but is no bench check', () => {
	expect(benchCheckState({ benchCheck: 'recorded' }).state).toBe('holds');
	expect(benchCheckState({ benchCheck: 'overridden' }).state).toBe('not yet');
	expect(benchCheckState({ benchCheck: null }).state).toBe('not yet');
});

test('Open reviews, marks, incidents and gaps on the build sheet hold a release back', () => {
	expect(reviewState({ unreviewed: 1, openMarks: 2 }, WORDS).stillTakes).toBe(
		'1 event to review, 2 rider marks to answer.'
	);
	expect(reviewState({ unreviewed: 0, openMarks: 0 }, WORDS).state).toBe('holds');
	expect(incidentsState({ openIncidents: 1 }, WORDS).state).toBe('not yet');
	expect(incidentsState({ openIncidents: 0 }, WORDS).state).toBe('holds');
	expect(buildSheetState({ missingOnBuildSheet: ['end float'] }).stillTakes).toContain('end float');
	expect(buildSheetState({ missingOnBuildSheet: [] }).state).toBe('holds');
});

test('One injury or one large slip ends the test, whatever the rate says', () => {
	const at = (injuries: number, largestConfirmedCrankDeg: number) =>
		stopRuleState(CRITERIA, { injuries, largestConfirmedCrankDeg }, WORDS);
	expect(at(0, 359).state).toBe('holds');
	expect(at(0, 360)).toMatchObject({ state: 'fails', sentence: expect.stringContaining('Stop the test') });
	expect(at(1, 0)).toMatchObject({ state: 'fails', sentence: expect.stringContaining('Stop the test') });
});
