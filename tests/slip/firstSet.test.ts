import { describe, expect, it } from 'vitest';
import { random } from '../../sample-rides/generator/random';
import { FEATURE_NAMES } from '$lib/slip/candidateFeatures';
import { FeatureColumns } from '$lib/slip/model/featureColumns';
import { ASKED_FROM, firstSetOf, type ScorerModel } from '$lib/slip/model/firstSet';
import scorer from '$lib/slip/model/scorer.json';
import { treeLogOdds } from '$lib/slip/model/treeModel';
import { firstSetAsks, mayScore, scoreCandidate } from '$lib/slip/scoreCandidate';

const SCORER = scorer as ScorerModel;

/** Features near cuts of the trees, so that rows come to many leaves. */
function rowsNearCuts(count: number): number[][] {
	const cuts = FEATURE_NAMES.map((): number[] => []);
	for (const tree of SCORER.trees) for (const node of tree) if (node.length > 1) cuts[node[0]].push(node[1]);
	const chance = random(5);
	return Array.from({ length: count }, () =>
		cuts.map((own) => (own.length > 0 ? own[Math.floor(chance.next() * own.length)] + 1e-9 : 0))
	);
}

describe('the first set of trees', () => {
	it('has the whole voice that it had a share of in the mean', () => {
		const model = { names: ['a'], bias: -1, sets: 2, trees: [[[0, 5, 0, 1, 2], [0], [1]], [[3]]] };
		expect(treeLogOdds(model, [6])).toBe(3);
		expect(treeLogOdds(firstSetOf(model), [6])).toBe(1);
		expect(treeLogOdds(firstSetOf(model), [4])).toBe(-1);
	});

	it('is one of equal sets in what ships', () => {
		expect(SCORER.sets).toBeGreaterThan(1);
		expect(SCORER.trees.length % SCORER.sets).toBe(0);
		expect(firstSetOf(SCORER).trees).toHaveLength(SCORER.trees.length / SCORER.sets);
	});

	it('leaves out before the others are asked what it leaves out in the end', () => {
		const rows = rowsNearCuts(400);
		const known = new FeatureColumns(FEATURE_NAMES.length, rows.length);
		for (const row of rows) known.add(row);
		const first = firstSetOf(SCORER);
		const asked = rows.map((row) => treeLogOdds(first, row) >= ASKED_FROM);
		expect(rows.map(firstSetAsks)).toEqual(asked);
		const scores = rows.map(scoreCandidate).sort((a, b) => a - b);
		const limit = scores[200];
		const reach = rows.flatMap((row, i) => (asked[i] && scoreCandidate(row) >= limit ? [i] : []));
		expect(mayScore(known, limit)).toEqual(reach);
		const byOthersAlone = rows.filter((row, i) => !asked[i] && scoreCandidate(row) >= limit);
		expect(byOthersAlone.length).toBeGreaterThan(0);
	});
});

it('some rows of columns are those rows, in the order asked for', () => {
	const all = new FeatureColumns(2, 3);
	for (const row of [
		[1, 2],
		[3, NaN],
		[5, 6]
	])
		all.add(row);
	const some = all.some([2, 1]);
	expect(some.rows).toBe(2);
	expect([some.row(0), some.row(1)]).toEqual([
		[5, 6],
		[3, NaN]
	]);
});
