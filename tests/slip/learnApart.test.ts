import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serialize } from 'node:v8';
import { afterAll, describe, expect, it } from 'vitest';
import { FOLDS, leftOutIn } from '../bench/training/folds';
import { learnApart } from '../bench/training/learnApart';
import { OPTIONS } from '../bench/training/plan';
import type { TrainingPart } from '../bench/training/trainingRides';

const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-kept-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const keep = (fold: number) => {
	for (const [kind, count] of [
		['trees', OPTIONS.sets],
		['nets', OPTIONS.nets]
	] as const)
		for (let k = 0; k < count; k++)
			writeFileSync(join(folder, `${kind}-${fold}-${k}`), serialize({ model: kind, logOdds: [[fold, k]] }));
};

describe('learnApart', () => {
	it('learns nothing again that lies in the folder: by fold, trees and nets in their order', async () => {
		FOLDS.forEach((_, fold) => keep(fold));
		const learned = await learnApart('no rows are read', folder, false);
		expect(learned).toHaveLength(FOLDS.length);
		expect(learned[3].trees.map(({ logOdds }) => logOdds[0])).toEqual(
			Array.from({ length: OPTIONS.sets }, (_, k) => [3, k])
		);
		expect(learned[3].nets.map(({ model }) => model)).toEqual(Array(OPTIONS.nets).fill('nets'));
	});

	it('learns what is missing, and says which of it failed', async () => {
		rmSync(join(folder, `nets-1-0`));
		await expect(learnApart(join(folder, 'no such rows'), folder, false)).rejects.toThrow('nets-1-0');
	});
});

describe('leftOutIn', () => {
	const part = (origin: TrainingPart['origin'], group: string) => ({ origin, group }) as TrainingPart;

	it('leaves every labelled device and every generated ride out of one fold, and nothing behind the last', () => {
		const parts = [
			part('real', 'real/r09'),
			part('simulated', 'simulated/a12'),
			part('generated', 'generated/9003')
		];
		for (const one of parts) {
			expect(FOLDS.filter((_, fold) => leftOutIn(one, fold))).toHaveLength(1);
			expect(leftOutIn(one, FOLDS.length)).toBe(false);
		}
	});
});
