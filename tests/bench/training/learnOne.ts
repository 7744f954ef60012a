/**
 * Learns one set of trees or one net, and is started by learnApart.ts:
 *
 *   npx tsx tests/bench/training/learnOne.ts ROWS trees-2-0 FILE
 */
import { writeFileSync } from 'node:fs';
import { serialize } from 'node:v8';
import { netReader } from '../../../src/lib/slip/model/netModel';
import { treeLogOdds } from '../../../src/lib/slip/model/treeModel';
import { emptyWindow } from '../../../src/lib/slip/slipWindow';
import { FOLDS, judgedIn } from './folds';
import { keptRows } from './keptRows';
import { learnNet } from './learnNet';
import { growSet, taughtRows } from './learnScorer';
import { OPTIONS } from './plan';
import type { TrainingPart } from './trainingRides';

const [rows, job, into] = process.argv.slice(2);
const [kind, foldText, numberText] = job.split('-');
const fold = Number(foldText);
const number = Number(numberText);
const parts = await keptRows<TrainingPart[]>(rows, () => Promise.reject(new Error(`no rows in ${rows}`)));
const leftOut: readonly string[] = FOLDS[fold] ?? [];
const taught = parts.filter((part) => !part.probe && !leftOut.includes(part.group));
const judged = judgedIn(parts, fold);

if (kind === 'trees') {
	const model = growSet(taught, OPTIONS, number);
	const logOdds = judged.map((part) => part.rows.map((row) => treeLogOdds(model, row)));
	writeFileSync(into, serialize({ model, logOdds }));
} else {
	const { rows: windows, target, weight } = taughtRows(taught, (part) => part.windows, OPTIONS);
	const model = learnNet({ windows, target, weight }, 100 * OPTIONS.seed + number, console.log);
	const read = netReader([model]);
	const logOdds = judged.map((part) => part.windows.map((flat) => read(emptyWindow(flat))));
	writeFileSync(into, serialize({ model, logOdds }));
}
