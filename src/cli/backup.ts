import { existsSync } from 'node:fs';
import {
	actorOf,
	LedgerRefusal,
	listPeople,
	makeBackup,
	openLedger,
	readConfig,
	splitFlags
} from '$lib/server';
import { sentenceOf } from './archive/sentenceOf';
import { splitSwitches } from './archive/splitSwitches';

const USAGE = 'npm run backup -- FOLDER [--keep N] [--check] [--data FOLDER]';

/**
 * Copies the ledger and what is new in the store into a folder, while the server runs or not.
 *
 * @returns 1 when a source could not be copied; the backup holds all the others then
 */
async function main(args: readonly string[]): Promise<number> {
	const { on, argv } = splitSwitches(args, ['check']);
	const { flags, rest } = splitFlags(argv, ['data', 'keep']);
	if (rest.length !== 1) throw new LedgerRefusal('wrong-value', `Name one folder. Usage: ${USAGE}`);
	const keep = flags.keep === undefined ? undefined : Number(flags.keep);
	if (keep !== undefined && !(Number.isInteger(keep) && keep >= 1))
		throw new LedgerRefusal('wrong-value', `--keep takes a whole number from 1, not ${flags.keep}.`);
	const config = readConfig(process.env, flags.data ? ['--data', flags.data] : []);
	if (!existsSync(config.dataFolder))
		throw new LedgerRefusal('not-found', `There is no ledger in ${config.dataFolder}.`);
	const ledger = openLedger(config.dataFolder, { migrate: true });
	try {
		const owner = listPeople(ledger).find(({ role }) => role === 'owner');
		const outcome = await makeBackup(ledger, owner ? actorOf(owner) : null, rest[0], {
			keep,
			check: on.has('check')
		});
		const { generation, sources, added, generations, missing, damaged } = outcome;
		process.stdout.write(
			`${generation}: the ledger and ${sources} files, ${added} of them new; ${generations} dated ledgers are kept\n`
		);
		for (const [what, hashes] of [['missing from', missing] as const, ['damaged in', damaged] as const])
			for (const sha256 of hashes)
				process.stdout.write(`${sha256} is ${what} the store and is not in the backup\n`);
		return missing.length + damaged.length > 0 ? 1 : 0;
	} finally {
		ledger.close();
	}
}

main(process.argv.slice(2)).then(
	(code) => (process.exitCode = code),
	(error: unknown) => {
		process.stderr.write(`${sentenceOf(error)}\n`);
		process.exitCode = 1;
	}
);
