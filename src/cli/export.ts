import { createWriteStream, existsSync, renameSync, rmSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import {
	actorOf,
	exportArchive,
	exportTables,
	LedgerRefusal,
	listPeople,
	noteExport,
	openLedger,
	readConfig,
	splitFlags
} from '$lib/server';
import { sentenceOf } from './archive/sentenceOf';
import { splitSwitches } from './archive/splitSwitches';

const USAGE = 'npm run export -- FILE [--tables] [--sources] [--attachments] [--names] [--data FOLDER]';

/**
 * Writes the whole ledger into one file, while the server runs or not: an archive that gives the same ledger
 * again, or with --tables its tables for a spreadsheet. The file appears when it is complete.
 */
async function main(args: readonly string[]): Promise<void> {
	const { on, argv } = splitSwitches(args, ['tables', 'sources', 'attachments', 'names']);
	const { flags, rest } = splitFlags(argv, ['data']);
	if (rest.length !== 1) throw new LedgerRefusal('wrong-value', `Name one file to write. Usage: ${USAGE}`);
	const file = resolve(rest[0]);
	if (existsSync(file)) throw new LedgerRefusal('conflict', `${file} is there already; name another file.`);
	const config = readConfig(process.env, flags.data ? ['--data', flags.data] : []);
	if (!existsSync(config.dataFolder))
		throw new LedgerRefusal('not-found', `There is no ledger in ${config.dataFolder}.`);
	const ledger = openLedger(config.dataFolder, { migrate: true });
	const aside = `${file}.part`;
	try {
		const options = {
			sources: on.has('sources'),
			attachments: on.has('attachments'),
			names: on.has('names')
		};
		const owner = listPeople(ledger).find(({ role }) => role === 'owner');
		if (owner) noteExport(ledger, actorOf(owner), on.has('tables') ? 'tables' : 'archive', options);
		const stream = on.has('tables') ? exportTables(ledger, options) : exportArchive(ledger, options);
		await pipeline(stream, createWriteStream(aside, { flags: 'w' }));
		renameSync(aside, file);
		process.stdout.write(`${file}: ${statSync(file).size} bytes, ${tellNames(options.names)}\n`);
	} finally {
		rmSync(aside, { force: true });
		ledger.close();
	}
}

function tellNames(names: boolean): string {
	return names ? "with people's names" : "codes in place of people's names";
}

main(process.argv.slice(2)).catch((error: unknown) => {
	process.stderr.write(`${sentenceOf(error)}\n`);
	process.exitCode = 1;
});
