import { describe, expect, it } from 'vitest';
import { expectedSlips } from '$lib/server/evidence/expectedSlips';
import type { EvidenceRide } from '$lib/server/evidence/buildEvidence';
import { buildRates, unitsOf } from '$lib/server/evidence/buildRates';
import { lifeOfBuild } from '$lib/server/evidence/lifeOfBuild';
import { setAgainst } from '$lib/server/evidence/setAgainst';
import { strata } from '$lib/server/evidence/strata';
import { wheelHistories } from '$lib/server/evidence/wheelHistories';
import { createFormats } from '$lib/ui/formats';
import { againstWords } from '$lib/ui/againstWords';
import { correctedWords } from '$lib/ui/detectionWords';
import { feltWords } from '$lib/ui/feltWords';
import { rateWords } from '$lib/ui/rateWords';
import { cell, ride, slip } from './rides';

/** Ways in which figures about a hub could flatter it; each is held here by name, whatever else tests it. */
const formats = createFormats('en-GB', 'UTC');
const COUNTING = { unit: 'slips', unreviewed: 'slip' } as const;
const evidence = (rides: EvidenceRide[]) => ({
	buildId: 1,
	build: 'New',
	wheels: [{ id: 1, name: 'Wheel 1', endM: 800_000 }],
	rides
});
const oldRides = Array.from({ length: 10 }, (_, index) =>
	ride({
		ageFromM: 50_000 * index,
		events: [slip({ standing: 'confirmed' }), slip({ startS: 900, atM: 20_000, standing: 'confirmed' })]
	})
);

describe('traps', () => {
	it('zero slips never read as "no slips will happen"', () => {
		const none = buildRates(evidence([ride({})]), COUNTING).pooled;
		for (const words of [
			rateWords(none, formats).value,
			rateWords(none, formats).sentence,
			correctedWords({ value: 0, lower: 0, upper: 9 }, formats)
		]) {
			expect(words).toMatch(/at most|may still be/);
			expect(words).not.toMatch(/\bno slips\b|^0\b|\b0\.0/i);
		}
		expect(none.upperPerHundredKm!).toBeGreaterThan(3);
	});

	it('kilometres that could not have shown a slip never help the new build', () => {
		const watched = [ride({})];
		const blind = ride({
			ageFromM: 50_000,
			totalM: 500_000,
			observedM: 0,
			cells: [{ ...cell(5, 0), drivenM: 400_000 }],
			hours: [],
			observed: []
		});
		const [alone, withBlind] = [watched, [...watched, blind]].map((rides) => ({
			rate: buildRates(evidence(rides), COUNTING).pooled,
			against: setAgainst(rides, oldRides, 'slips', 'none'),
			units: unitsOf(rides, COUNTING)
		}));
		expect(withBlind).toEqual(alone);
	});

	it('an age gap is no exposure and a tie is two slips', () => {
		const rides = [
			ride({ events: [slip({ atM: 10_000 }), slip({ startS: 500, atM: 10_000 })] }),
			ride({ ageFromM: 700_000, events: [] })
		];
		const [history] = wheelHistories(evidence(rides), COUNTING);
		expect(history.windows.reduce((sum, { from, to }) => sum + to - from, 0)).toBe(80_000);
		expect(history.events).toEqual([10_000, 10_000]);
		const { curve, gaps } = lifeOfBuild(evidence(rides), COUNTING);
		expect(curve.at(-1)!.value).toBe(2);
		expect(gaps).toContainEqual({ fromM: 40_000, toM: 700_000 });
	});

	it('an expected of nought gives no upper limit, not a pass', () => {
		const quiet = [ride({ events: [] })];
		const { expected, upper, ratio } = expectedSlips(
			strata(quiet, 'slips', 'slip'),
			strata([ride({ events: [] })], 'slips', 'none')
		);
		expect({ expected, upper, ratio }).toEqual({ expected: 0, upper: null, ratio: null });
	});

	it("a new build that was ridden gently does not pass on the old build's hard kilometres", () => {
		const gentle = [ride({ cells: [cell(0, 40_000)] })];
		const against = setAgainst(gentle, oldRides, 'slips', 'none');
		expect(against.expected).toMatchObject({ comparedM: 0, notComparedM: 40_000, upper: null });
		const words = againstWords(
			{ decides: against, asFound: against },
			{
				build: 'New',
				reference: 'Old',
				buildObservedM: 40_000,
				referenceObservedM: 400_000,
				referenceUnreviewed: 0,
				referenceConfirmed: 20,
				buildUnreviewed: 0
			},
			formats
		);
		expect(words).toContain('the two were not ridden alike');
	});

	it('a build without rides has nothing to say and no limit', () => {
		expect(buildRates(evidence([]), COUNTING).pooled).toMatchObject({
			ratePerHundredKm: null,
			upperPerHundredKm: null
		});
		expect(setAgainst([], oldRides, 'slips', 'none').ratio).toMatchObject({ ratio: null, upper: null });
	});

	it('a burst does not narrow the limits, and one ride decides about no build', () => {
		const burst = ride({
			events: Array.from({ length: 12 }, (_, index) => slip({ startS: 100 + 30 * index, atM: 500 * index }))
		});
		const spread = Array.from({ length: 12 }, (_, index) =>
			ride({ ageFromM: 50_000 * index, events: [slip({})] })
		);
		const quiet = Array.from({ length: 11 }, (_, index) => ride({ ageFromM: 50_000 * (index + 1) }));
		const width = (rides: EvidenceRide[]) => {
			const { lowerPerHundredKm, upperPerHundredKm } = buildRates(evidence(rides), COUNTING).pooled;
			return upperPerHundredKm! / lowerPerHundredKm;
		};
		expect(width([burst, ...quiet])).toBeGreaterThan(2 * width(spread));
	});

	it('two lists without a common slip say nothing, instead of "none missed"', () => {
		expect(
			feltWords(
				{
					rides: 1,
					observedM: 40_000,
					both: 0,
					markOnly: 2,
					detectionOnly: 3,
					waiting: 0,
					seen: 5,
					total: null,
					lower: null,
					upper: null,
					confidence: 0.95,
					fewOnBoth: true
				},
				formats
			).join(' ')
		).toContain('say nothing about how many both missed');
	});
});
