import { expect, test } from 'vitest';
import { criteriaProblems } from '$lib/release/criteriaProblems';
import { CRITERIA } from './testWords';

test('Criteria whose plan shows the rate have no problem', () => {
	expect(criteriaProblems(CRITERIA)).toEqual([]);
});

test('A plan that cannot show its rate is refused with the bound that it could show', () => {
	// NIST/SEMATECH e-Handbook 8.4.5.1: no event in 300 km bounds the rate at 2.996 / 0.3 = 9.99 per 1000 km
	const plan = { kind: 'fixed', observedMPerWheel: 100_000, slipsAllowed: 0 } as const;
	expect(criteriaProblems({ ...CRITERIA, rateAtMostPerThousandKm: 5, plan })).toEqual([
		expect.stringContaining('bounded at 9.99, not at 5')
	]);
	expect(criteriaProblems({ ...CRITERIA, rateAtMostPerThousandKm: 10, plan })).toEqual([]);
});

test('One slip more takes more distance for the same rate', () => {
	const plan = { kind: 'fixed', observedMPerWheel: 500_000, slipsAllowed: 1 } as const;
	// 4.744 / 1.5 = 3.16
	expect(criteriaProblems({ ...CRITERIA, plan })[0]).toContain('bounded at 3.16');
});

test.each([
	[{ rateAtMostPerThousandKm: 0 }, 'rate'],
	[{ confidence: 1 }, 'confidence'],
	[{ wheels: 0 }, 'wheel'],
	[{ riders: 1.5 }, 'rider'],
	[{ expectedRatioAtMost: 1.2 }, 'expected'],
	[{ observedMWet: -1 }, 'Distances'],
	[{ hardTorqueNm: NaN }, 'torque'],
	[{ stopAtCrankDeg: 45 }, 'stop rule'],
	[{ plan: { kind: 'fixed', observedMPerWheel: 0, slipsAllowed: 0 } }, 'distance per wheel'],
	[{ plan: { kind: 'fixed', observedMPerWheel: 500_000, slipsAllowed: 0.5 } }, 'whole number'],
	[
		{ plan: { kind: 'sequential', goodPerThousandKm: 3, riskOfFailingGood: 0.1, longestObservedM: 9e6 } },
		'good rate'
	]
] as const)('Criteria with %j are refused', (change, word) => {
	const problems = criteriaProblems({ ...CRITERIA, ...change });
	expect(problems).toHaveLength(1);
	expect(problems[0]).toContain(word);
});
