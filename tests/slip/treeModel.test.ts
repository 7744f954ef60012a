import { describe, expect, it } from 'vitest';
import { FEATURE_NAMES } from '$lib/slip/candidateFeatures';
import observed from '$lib/slip/model/observed.json';
import scorer from '$lib/slip/model/scorer.json';
import { treeLogOdds } from '$lib/slip/model/treeModel';
import { OBSERVATION_FEATURES } from '$lib/slip/observationFeatures';

const model = { names: ['a', 'b'], bias: -1, trees: [[[0, 5, 1, 1, 2], [0.5], [1, 2, 0, 3, 4], [1], [3]]] };

describe('treeLogOdds', () => {
	it('adds the leaf that a row falls into to the bias: at the cut left, above it right', () => {
		expect(treeLogOdds(model, [5, 0])).toBe(-0.5);
		expect(treeLogOdds(model, [6, 2])).toBe(0);
		expect(treeLogOdds(model, [6, 3])).toBe(2);
	});

	it('sends what is missing to the side that was learned', () => {
		expect(treeLogOdds(model, [NaN, 0])).toBe(-0.5);
		expect(treeLogOdds(model, [6, NaN])).toBe(2);
	});
});

describe('the committed models', () => {
	it('name the features that the code computes, in the same order', () => {
		expect(scorer.names).toEqual([...FEATURE_NAMES]);
		expect(observed.names).toEqual([...OBSERVATION_FEATURES]);
	});

	it('find more the larger a slip is', () => {
		expect(observed.sizeSlope).toBeGreaterThan(0);
	});
});
