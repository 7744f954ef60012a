import {
	LedgerRefusal,
	openLedger,
	readConfig,
	restoreArchive,
	restoreBackup,
	splitFlags
} from '$lib/server';
import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { sentenceOf } from './archive/sentenceOf';

const USAGE = 'npm run restore -- FILE or FOLDER [--data FOLDER]';

/** Takes an archive (a file) or a backup (a folder) into an empty ledger; a data folder that is not there is made. */
async function main(argv: readonly string[]): Promise<void> {
	const { flags, rest } = splitFlags(argv, ['data']);
	if (rest.length !== 1)
		throw new LedgerRefusal('wrong-value', `Name one archive or backup. Usage: ${USAGE}`);
	const config = readConfig(process.env, flags.data ? ['--data', flags.data] : []);
	const ledger = openLedger(config.dataFolder, { migrate: true });
	try {
		const path = resolve(rest[0]);
		const isFolder = statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
		const outcome = await (isFolder ? restoreBackup : restoreArchive)(ledger, path);
		const { tables, rows, files, missing, names } = outcome;
		process.stdout.write(`${rows} rows in ${tables} tables, ${files} files, now in ${config.dataFolder}\n`);
		if (missing > 0)
			process.stdout.write(
				`${missing} files are not in it: results stay, strips of those rides cannot be drawn.\n`
			);
		if (!names) process.stdout.write('Names were left out: codes are the names now.\n');
	} finally {
		ledger.close();
	}
}

main(process.argv.slice(2)).catch((error: unknown) => {
	process.stderr.write(`${sentenceOf(error)}\n`);
	process.exitCode = 1;
});
