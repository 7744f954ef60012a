import { describe, expect, it } from 'vitest';
import type { AgainstReference, BuildRates, TrendView } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { againstWords, limitsWords, type Pair } from '$lib/ui/againstWords';
import { factorWords, type FactorFigures } from '$lib/ui/factorWords';
import { intervalWords } from '$lib/ui/intervalWords';
import { trendTestWords, trendWords } from '$lib/ui/trendWords';

const NOT_RIDDEN = { fromNm: null, highestNm: null, aboveM: 0, aboveHighestM: 0, slipsWithoutTorque: 0 };
const formats = createFormats('en-GB', 'UTC');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

const PAIR: Pair = {
	build: 'New',
	reference: 'Old',
	buildObservedM: 200_000,
	referenceObservedM: 300_000,
	referenceUnreviewed: 0,
	referenceConfirmed: 12,
	buildUnreviewed: 0
};

function against(change: object = {}, ratioChange: object = {}): AgainstReference {
	const told = {
		ratio: {
			ratio: 0.2,
			lower: 0.05,
			upper: 0.6,
			confidence: 0.95,
			pValue: 0.01,
			decidedBy: 'single' as const,
			assumesSingleEvents: false,
			...ratioChange
		},
		expected: {
			counted: 1,
			expected: 8.2,
			expectedSd: 2,
			ratio: 0.12,
			lower: 0.003,
			upper: 0.8,
			confidence: 0.95,
			comparedM: 150_000,
			notComparedM: 50_000,
			slipsNotCompared: 0,
			leftOut: [],
			groups: [],
			...change
		}
	};
	return { buildId: 2, build: 'New', decides: told, asFound: told, coverage: NOT_RIDDEN, corrected: null };
}

describe('againstWords', () => {
	const words = (told: AgainstReference, pair: Partial<Pair> = {}) =>
		plain(againstWords(told, { ...PAIR, ...pair }, formats));

	it('answers at the same torque and age where enough can be compared', () => {
		expect(words(against())).toBe(
			'On the 150 km that can be compared, Old would have had about 8.2 slips; 1 slip counts on New. The rides support that, on these wheels, New slips less often than Old at the same hub torque and age.'
		);
	});

	it('supports a difference only when the limits leave 1 out', () => {
		expect(words(against({ upper: 1.01 }))).toContain('do not show whether New or Old slips more often');
		expect(words(against({ lower: 1.2, upper: 8 }))).toContain(
			'support that, on these wheels, New slips more often'
		);
		expect(words(against({ upper: null }))).toContain('do not show');
	});

	it('says that the two were not ridden alike where too little can be compared', () => {
		const gentle = against({ comparedM: 20_000, notComparedM: 180_000 });
		expect(words(gentle)).toMatch(
			/^Only 10 % of the distance of New was ridden at a torque and age that Old knows/
		);
		expect(words(gentle)).toContain(
			'Per observed km alone: the rides support that, on these wheels, New slips less often than Old.'
		);
	});

	it('decides nothing while no event of the old build is reviewed', () => {
		const open = { referenceConfirmed: 0, referenceUnreviewed: 9 };
		expect(words(against(), open)).toMatch(
			/^No event of Old is confirmed yet: nothing can be decided before its 9 are reviewed\. If all that was found counted on both: on the 150 km/
		);
	});

	it('says nothing of unreviewed events but what they would support if they were slips', () => {
		const open = { referenceConfirmed: 0, referenceUnreviewed: 9 };
		expect(words(against(), open)).toContain('The rides would then support that, on these wheels, New');
		expect(words(against(), open)).not.toContain('rides support');
		expect(words(against({ upper: 1.01 }), open)).toContain('would not show whether');
	});

	it('calls the build worse only on condition while events of it are not reviewed', () => {
		const worse = against({ lower: 1.2, upper: 8 });
		expect(words(worse, { buildUnreviewed: 3 })).toContain(
			'If the 3 events of New that nobody has reviewed are slips, the rides support that, on these wheels, New slips more often than Old'
		);
		expect(words(worse, { buildUnreviewed: 1 })).toContain(
			'If the event of New that nobody has reviewed is a slip,'
		);
		// they count against it: that it is better holds all the more once they are reviewed
		expect(words(against(), { buildUnreviewed: 3 })).toContain(
			'The rides support that, on these wheels, New slips less'
		);
	});

	it('promises no tenths of slips that were only expected', () => {
		expect(words(against({ expected: 38.9 }))).toContain('about 39 slips');
	});

	it('never calls a build free of slips, nor compares what was not observed', () => {
		expect(words(against({ counted: 0, ratio: 0, lower: 0, upper: 0.45 }))).toContain('none counts on New');
		expect(words(against(), { buildObservedM: 0 })).toBe(
			'Nothing was observed on New yet, so the two cannot be set against each other.'
		);
	});
});

describe('limitsWords', () => {
	it('gives a ratio with its limits, a bound after no slip, and says when there is none', () => {
		expect(limitsWords({ ratio: 0.2, lower: 0.05, upper: 0.6 }, formats)).toBe('0.20 (0.050 to 0.60)');
		expect(limitsWords({ ratio: 0, lower: 0, upper: 0.6 }, formats)).toBe('at most 0.60');
		expect(limitsWords({ ratio: null, lower: 2, upper: null }, formats)).toBe('at least 2.0');
		expect(limitsWords({ ratio: null, lower: 0, upper: null }, formats)).toBe('cannot be said');
	});
});

describe('intervalWords', () => {
	const rates = (change: object, wheels = 2): BuildRates => ({
		pooled: {
			count: 12,
			observedM: 200_000,
			ratePerHundredKm: 6,
			lowerPerHundredKm: 3,
			upperPerHundredKm: 11,
			confidence: 0.95,
			rides: 9,
			decidedBy: 'single',
			dispersion: 1,
			assumesSingleEvents: false,
			borrowedFrom: null,
			...change
		},
		wheels: Array.from({ length: wheels }, (_, id) => ({ id, name: `Wheel ${id}`, rate: null as never }))
	});

	it('says for how many wheels a rate speaks, and that few do not tell how hubs differ', () => {
		expect(intervalWords(rates({}, 1), formats)).toContain(
			'For this one wheel; how far hubs of this build differ'
		);
		expect(intervalWords(rates({}, 5), formats)).not.toContain('differ');
	});

	it('says what the limits assume or allow for', () => {
		expect(intervalWords(rates({ assumesSingleEvents: true }), formats)).toContain(
			'assume that slips do not cluster'
		);
		expect(intervalWords(rates({ decidedBy: 'bursts', dispersion: 2.4 }), formats)).toContain(
			'bursts within rides: 2.4 times'
		);
		expect(intervalWords(rates({ borrowedFrom: 'As delivered', dispersion: 3 }), formats)).toContain(
			'the rides of As delivered'
		);
	});

	it('says nothing of limits where nothing was observed', () => {
		expect(intervalWords(rates({ upperPerHundredKm: null }), formats)).toBe('');
	});
});

describe('trendWords', () => {
	const trend = (change: Partial<TrendView>): TrendView => ({
		verdict: 'worse',
		slips: 12,
		shape: 2,
		shapeLower: 1.2,
		shapeUpper: 3.1,
		pLaplace: 0.004,
		pChiSquare: 0.0004,
		confidence: 0.95,
		...change
	});

	it('says worse, better or neither with the growth and its limits', () => {
		expect(plain(trendWords(trend({}), formats))).toBe(
			'Gets worse with distance. With the distance doubled, the count is 4.0 times as large (2 times would be steady; growth exponent 2.0, 95 % limits 1.2 to 3.1).'
		);
		expect(trendWords(trend({ verdict: 'better', shape: 0.5 }), formats)).toMatch(/^Gets better/);
		expect(trendWords(trend({ verdict: 'not shown' }), formats)).toContain('does not prove it steady');
		expect(trendWords(trend({ shapeUpper: null }), formats)).toContain('to no limit');
	});

	it('makes a trend of events that nobody has reviewed a condition, not a finding', () => {
		expect(trendWords(trend({}), formats, 27)).toMatch(
			/^Gets worse with distance, if the 27 events that are not reviewed are slips\. /
		);
		expect(trendWords(trend({ verdict: 'better' }), formats, 1)).toMatch(
			/^Gets better with distance, if the event that is not reviewed is a slip\. /
		);
	});

	it('says of few slips that they are too few, and never that there is no trend', () => {
		expect(trendWords(trend({ verdict: 'too few to say', slips: 1, shape: null }), formats)).toBe(
			'Only 1 slip counts: too few to say whether the rate changes with distance.'
		);
		expect(trendWords(trend({ verdict: 'too few to say', slips: 4, shape: null }), formats, 4)).toMatch(
			/^Only 4 events count:/
		);
		expect(trendWords(trend({ verdict: 'too few to say', slips: 0, shape: null }), formats)).toMatch(
			/^No slip counts/
		);
	});

	it('gives the classical tests beside it', () => {
		expect(trendTestWords(trend({}), formats)).toContain('0.004 (Laplace), below 0.001 (chi-square)');
	});
});

describe('factorWords', () => {
	const factor = (change: Partial<FactorFigures>): FactorFigures => ({
		factor: 'hub torque',
		rider: null,
		kind: 'fit',
		ratio: 1.9,
		lower: 1.4,
		upper: 2.6,
		pValue: 0.004,
		...change
	});

	it('gives the size with limits, and a hint only where an influence is shown', () => {
		expect(factorWords(factor({}), null, formats)).toEqual({
			step: '10 Nm more at the hub',
			effect: '1.9 times as often (1.4 to 2.6)',
			hint: 'ratchet: ring, pawls or toothed rings'
		});
		expect(factorWords(factor({ pValue: 0.06 }), null, formats)).toMatchObject({
			effect: '1.9 times as often (1.4 to 2.6): not shown',
			hint: null
		});
	});

	it('says why nothing can be said, and names riders by their codes', () => {
		expect(factorWords(factor({ kind: 'inseparable', ratio: null }), null, formats).effect).toContain(
			'cannot tell them apart'
		);
		expect(factorWords(factor({ factor: 'rider', rider: 'R2' }), 'R1', formats).step).toBe(
			'R2 instead of R1'
		);
	});
});
