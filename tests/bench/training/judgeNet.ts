/**
 * Judges nets beside the trees by rides and devices left out, and both together:
 *
 *   npx tsx tests/bench/training/judgeNet.ts --rows FILE [--nets 2] [--seed 7]
 *
 * Prints what two trainings are compared by (meanRecall.ts) for the trees, for the mean of the nets, and for weighted means
 * of their log odds. Generated probes lie in rides of devices that neither has seen.
 */
import { treeLogOdds } from '../../../src/lib/slip/model/treeModel';
import { FOLDS, leftOutIn } from './folds';
import { keptRows } from './keptRows';
import { learnNets } from './learnNets';
import { netReader } from '../../../src/lib/slip/model/netModel';
import { emptyWindow } from '../../../src/lib/slip/slipWindow';
import { learnScorer } from './learnScorer';
import { meanRecall } from './meanRecall';
import { OPTIONS, PLAN } from './plan';
import { trainingRides, type TrainingPart } from './trainingRides';

const argument = (word: string, otherwise: string) => {
	const at = process.argv.indexOf(word);
	return at > 0 ? process.argv[at + 1] : otherwise;
};
const options = {
	...OPTIONS,
	nets: Number(argument('--nets', String(OPTIONS.nets))),
	seed: Number(argument('--seed', String(OPTIONS.seed)))
};
const SHARES = [0, 0.2, 0.33, 0.5, 1];

const parts = await keptRows(argument('--rows', '') || undefined, () => trainingRides(PLAN));
const judged: { part: TrainingPart; trees: number[]; net: number[] }[] = [];
for (let fold = 0; fold < FOLDS.length; fold++) {
	const taught = parts.filter((part) => !part.probe && !FOLDS[fold].includes(part.group));
	const scorer = learnScorer(taught, options);
	const readNets = netReader(learnNets(taught, options, (line) => console.log(`fold ${fold}, ${line}`)));
	for (const part of parts) {
		if (!leftOutIn(part, fold) || !(part.asRecorded || part.probe)) continue;
		judged.push({
			part,
			trees: part.rows.map((row) => treeLogOdds(scorer, row)),
			net: part.windows.map((flat) => readNets(emptyWindow(flat)))
		});
	}
}
console.log('| share of the net | simulated | real |\n|---|---|---|');
for (const share of SHARES) {
	const cells = ['simulated', 'real'].map((origin) => {
		const rides = judged
			.filter(({ part }) => part.asRecorded && part.origin === origin)
			.map(({ part, trees, net }) => ({
				part,
				logOdds: trees.map((own, i) => (1 - share) * own + share * net[i])
			}));
		return `${(100 * meanRecall(rides)).toFixed(1)} %`;
	});
	console.log(`| ${share} | ${cells.join(' | ')} |`);
}
