import { describe, expect, it } from 'vitest';
import { FEATURE_NAMES } from '$lib/slip/candidateFeatures';
import observed from '$lib/slip/model/observed.json';
import scorer from '$lib/slip/model/scorer.json';
import { FeatureColumns } from '$lib/slip/model/featureColumns';
import { treeLogOdds, type TreeModel } from '$lib/slip/model/treeModel';
import { treeLogOddsOfSeconds } from '$lib/slip/model/treeLogOddsOfSeconds';
import { treesMayReach } from '$lib/slip/model/treesMayReach';
import { OBSERVATION_FEATURES } from '$lib/slip/observationFeatures';
import { seededChance } from '$lib/slip/seededChance';

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

describe('treeLogOddsOfSeconds', () => {
	const deep: TreeModel = {
		names: ['a'],
		bias: 0.5,
		// a chain of 40 branches: more leaves than a word has bits
		trees: [Array.from({ length: 81 }, (_, i) => (i % 2 || i === 80 ? [i] : [0, i / 4, 1, i + 1, i + 2]))]
	};

	it.each([
		['of seconds', observed as TreeModel],
		['of candidates', scorer as TreeModel],
		['with too many leaves for its tables', deep]
	])('gives each wanted second what treeLogOdds gives its row, to the last bit: trees %s', (_, trees) => {
		const rows = drawnRows(trees.names.length, 300, 5);
		const columns = trees.names.map((_, f) => Float64Array.from(rows, (row) => row[f]));
		const wanted = Int32Array.from({ length: 150 }, (_, i) => 2 * i + (i > 70 ? 1 : 0));
		const logOdds = treeLogOddsOfSeconds(trees, columns, wanted);
		expect([...logOdds]).toEqual([...wanted].map((t) => treeLogOdds(trees, rows[t])));
		expect(new Set(logOdds).size).toBeGreaterThan(3);
	});
});

describe('treeLogOdds of the first features alone', () => {
	it('is the most that any values of the others bring', () => {
		expect(treeLogOdds(model, [6])).toBe(2);
		expect(treeLogOdds(model, [4])).toBe(-0.5);
		expect(treeLogOdds(model, [])).toBe(2);
	});
});

describe('treesMayReach', () => {
	const reachedBy = (trees: TreeModel, rows: readonly number[][], logOdds: number) => {
		const known = new FeatureColumns(rows[0].length, rows.length);
		for (const row of rows) known.add(row);
		return treesMayReach(trees, known, logOdds);
	};

	it('leaves a row out only where no value of the unknown features brings it there', () => {
		expect(reachedBy(model, [[6], [4]], 1)).toEqual([0]);
		expect(reachedBy(model, [[6], [4]], 2)).toEqual([0]);
		expect(reachedBy(model, [[6], [4]], 2.1)).toEqual([]);
	});

	it('never leaves out a row of the scorer that reaches the log odds, and says what one row alone says', () => {
		// more rows than are taken at once
		const rows = drawnRows(scorer.names.length, 540, 11);
		const whole = rows.map((row) => treeLogOdds(scorer as TreeModel, row));
		for (const known of [40, 97, 110, scorer.names.length]) {
			const first = rows.map((row) => row.slice(0, known));
			const most = first.map((row) => treeLogOdds(scorer as TreeModel, row));
			for (const logOdds of [-6, -4, -2, 0]) {
				const may = reachedBy(scorer as TreeModel, first, logOdds);
				expect(may).toEqual([...rows.keys()].filter((i) => most[i] >= logOdds));
				const reaching = [...rows.keys()].filter((i) => whole[i] >= logOdds);
				expect(reaching.filter((i) => !may.includes(i))).toEqual([]);
				if (known === scorer.names.length) expect(may).toEqual(reaching);
			}
		}
	});
});

describe('FeatureColumns', () => {
	it('gives back the rows that were put in', () => {
		const known = new FeatureColumns(2, 3);
		known.add([1, NaN]);
		known.add([3, 4]);
		expect(known.rows).toBe(2);
		expect(known.row(0)).toEqual([1, NaN]);
		expect([...known.columns[1]].slice(0, 2)).toEqual([NaN, 4]);
	});
});

/** Rows about the size of real ones, some values missing. */
function drawnRows(features: number, rows: number, seed: number): number[][] {
	const chance = seededChance(seed);
	return Array.from({ length: rows }, () =>
		Array.from({ length: features }, () =>
			chance.next() < 0.1 ? NaN : (chance.next() - 0.3) * 10 ** (4 * chance.next() - 2)
		)
	);
}

describe('the committed models', () => {
	it('name the features that the code computes, in the same order', () => {
		expect(scorer.names).toEqual([...FEATURE_NAMES]);
		expect(observed.names).toEqual([...OBSERVATION_FEATURES]);
	});

	it('find more the larger a slip is', () => {
		expect(observed.sizeSlope).toBeGreaterThan(0);
	});
});
