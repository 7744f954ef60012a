import { existsSync, readFileSync, renameSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { deserialize } from 'node:v8';
import type { TreeModel } from '../../../src/lib/slip/model/treeModel';
import { FOLDS } from './folds';
import { inOwnProcess } from './ownProcess';
import { OPTIONS } from './plan';

/** One set of trees or one net, and log odds of every candidate of the parts that were left out, in their order. */
export interface LearnedOne<Model> {
	readonly model: Model;
	readonly logOdds: readonly (readonly number[])[];
}

/** All that was learned with one fold left out; the fold after the last one leaves nothing out. */
export interface LearnedFold {
	readonly trees: readonly LearnedOne<TreeModel>[];
	readonly nets: readonly LearnedOne<Float32Array>[];
}

/**
 * Learns every set of trees and every net, for each fold and of everything, in processes of their own, as many beside
 * each other as there are processors. What lies in the folder already is not learned again: a training that was ended goes on.
 *
 * @param rows file of what was gathered (keptRows.ts)
 * @param folder where each result is kept
 * @param everything also what leaves nothing out, as the last one
 */
export async function learnApart(rows: string, folder: string, everything: boolean): Promise<LearnedFold[]> {
	const folds = FOLDS.length + (everything ? 1 : 0);
	const jobs = Array.from({ length: folds }, (_, fold) => [
		// nets take longest, so they begin
		...Array.from({ length: OPTIONS.nets }, (_, k) => `nets-${fold}-${k}`),
		...Array.from({ length: OPTIONS.sets }, (_, k) => `trees-${fold}-${k}`)
	]).flat();
	const left = jobs.filter((job) => !existsSync(join(folder, job)));
	const work = async () => {
		for (let job = left.shift(); job; job = left.shift()) {
			const started = performance.now();
			await inOwnProcess('learnOne.ts', [rows, job, join(folder, `${job}.part`)]);
			renameSync(join(folder, `${job}.part`), join(folder, job));
			console.log(`${job}: ${((performance.now() - started) / 1000).toFixed(0)} s, ${left.length} more`);
		}
	};
	await Promise.all(Array.from({ length: availableParallelism() }, work));
	const read = <Model>(kind: string, fold: number, count: number) =>
		Array.from({ length: count }, (_, k): LearnedOne<Model> =>
			deserialize(readFileSync(join(folder, `${kind}-${fold}-${k}`)))
		);
	return Array.from({ length: folds }, (_, fold) => ({
		trees: read<TreeModel>('trees', fold, OPTIONS.sets),
		nets: read<Float32Array>('nets', fold, OPTIONS.nets)
	}));
}
