import { existsSync } from 'node:fs';
import { setPriority } from 'node:os';
import { keepVerify, LedgerRefusal, readConfig, splitFlags, verifyLedger } from '$lib/server';
import { sentenceOf } from './archive/sentenceOf';
import { splitSwitches } from './archive/splitSwitches';
import { verifyAsText } from './verify/verifyAsText';

const USAGE = 'npm run --silent verify -- [--json] [--sample RIDES] [--seed TEXT] [--data FOLDER]';
const NICE = 10;

/**
 * Says what in a data folder is whole and what is not, while the server runs or not. Changes nothing but the
 * last report, which the page "The ledger as a whole" shows.
 *
 * @returns 0 when all is whole, else 1
 */
async function main(args: readonly string[]): Promise<number> {
	const { on, argv } = splitSwitches(args, ['json']);
	const { flags, rest } = splitFlags(argv, ['data', 'sample', 'seed']);
	if (rest.length > 0) throw new LedgerRefusal('wrong-value', `Not understood. Usage: ${USAGE}`);
	const sample = flags.sample === undefined ? undefined : Number(flags.sample);
	if (sample !== undefined && !(Number.isInteger(sample) && sample >= 0))
		throw new LedgerRefusal('wrong-value', `--sample takes a whole number from 0, not ${flags.sample}.`);
	const { dataFolder } = readConfig(process.env, flags.data ? ['--data', flags.data] : []);
	if (!existsSync(dataFolder)) throw new LedgerRefusal('not-found', `There is no ledger in ${dataFolder}.`);
	// others come first: the server, and whoever works at this machine
	setPriority(NICE);
	const report = await verifyLedger(dataFolder, {
		sample,
		// another few rides each day, and the same ones when it is asked again
		seed: flags.seed ?? new Date().toISOString().slice(0, 10),
		onPart: (name) => process.stderr.isTTY && process.stderr.write(`${name} ...\n`)
	});
	keepVerify(dataFolder, report);
	process.stdout.write(`${on.has('json') ? JSON.stringify(report) : verifyAsText(report)}\n`);
	return report.whole ? 0 : 1;
}

main(process.argv.slice(2)).then(
	(code) => (process.exitCode = code),
	(error: unknown) => {
		process.stderr.write(`${sentenceOf(error)}\n`);
		process.exitCode = 1;
	}
);
