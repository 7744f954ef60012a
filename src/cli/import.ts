import { createReadStream } from 'node:fs';
import { basename } from 'node:path';
import {
	archiveLines,
	choosePerson,
	ImportRunner,
	LedgerRefusal,
	openLedger,
	readConfig,
	recoverUploads,
	splitFlags,
	storeFile,
	actorOf,
	type Ledger
} from '$lib/server';
import { findRideFiles } from './import/findRideFiles';
import { outcomeLine } from './import/outcomeLine';
import { whoImports } from './import/whoImports';

const USAGE = 'npm run import -- FILES or FOLDERS [--data FOLDER] [--as NAME]';
const LOOK_EVERY_MS = 150;

/**
 * Puts ride files into the ledger while the server runs or not: stores and queues them, then waits for
 * their outcome. Whoever holds the ledger's runner lease analyses; that is this process when nobody else
 * does, or when the other one goes away meanwhile.
 */
async function main(argv: readonly string[]): Promise<number> {
	const { flags, rest } = splitFlags(argv, ['data', 'as']);
	if (rest.length === 0) throw new LedgerRefusal('wrong-value', `Name files or folders. Usage: ${USAGE}`);
	const config = readConfig(process.env, flags.data ? ['--data', flags.data] : []);
	const files = rest.flatMap(findRideFiles);
	if (files.length === 0) throw new LedgerRefusal('not-found', 'There is no ride file in there.');
	const ledger = openLedger(config.dataFolder, { migrate: true });
	const runner = new ImportRunner(ledger);
	try {
		const actor = actorOf(choosePerson(ledger, flags.as ?? whoImports(ledger)));
		await recoverUploads(ledger);
		runner.start();
		const waiting = [];
		let refused = 0;
		for (const file of files) {
			try {
				const stored = await storeFile(ledger, actor, {
					name: basename(file),
					bytes: createReadStream(file)
				});
				waiting.push({ file, importId: stored.importId });
			} catch (error) {
				refused++;
				printLine(`${file}: not taken: ${sentenceOf(error)}`);
			}
			runner.look();
		}
		for (const { file, importId } of waiting) {
			const report = async (name: string, id: number) => {
				const { line, taken } = await outcome(ledger, name, id);
				if (!taken) refused++;
				printLine(line);
			};
			await report(file, importId);
			for (const inside of archiveLines(ledger, importId))
				await report(`${file}: ${inside.name}`, inside.importId);
		}
		return refused > 0 ? 1 : 0;
	} finally {
		await runner.stop();
		ledger.close();
	}
}

async function outcome(ledger: Ledger, file: string, importId: number) {
	for (;;) {
		const known = outcomeLine(ledger, file, importId);
		if (known) return known;
		await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
	}
}

/** One line, whatever is in a file's name: control characters could steer the terminal. */
function printLine(line: string): void {
	process.stdout.write(`${line.replace(/\p{Cc}/gu, '?')}\n`);
}

function sentenceOf(error: unknown): string {
	if (error instanceof LedgerRefusal) return error.sentence;
	return error instanceof Error ? error.message : String(error);
}

main(process.argv.slice(2)).then(
	(code) => (process.exitCode = code),
	(error: unknown) => {
		process.stderr.write(`${sentenceOf(error)}\n`);
		process.exitCode = 1;
	}
);
