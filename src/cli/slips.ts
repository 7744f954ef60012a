import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Bike } from '$lib/drivetrain/bike';
import { decodeRide } from '$lib/ride/decodeRide';
import { RideRefused } from '$lib/ride/ride';
import { analyseRide } from '$lib/slip/analyseRide';
import { slipsAsJson } from './slips/slipsAsJson';
import { slipsAsTable } from './slips/slipsAsTable';
import { readBike } from './slips/readBike';

const USAGE = 'npm run --silent slips -- FILE [--json] [--bike BIKE.json]';

/** Prints the slips of one ride file; the ledger is not touched. */
async function main(args: readonly string[]): Promise<number> {
	let file: string | undefined;
	let asJson = false;
	let bike: Bike = {};
	for (let i = 0; i < args.length; i++) {
		if (args[i] === '--json') asJson = true;
		else if (args[i] === '--bike' && args[i + 1]) bike = readBike(args[++i]);
		else if (args[i].startsWith('--') || file) throw new Error(`Not understood: ${args[i]}. Usage: ${USAGE}`);
		else file = args[i];
	}
	if (!file) throw new Error(`Name a ride file. Usage: ${USAGE}`);
	const ride = await decodeRide(readWhole(file), basename(file));
	const analysis = analyseRide(ride, bike);
	const text = asJson
		? JSON.stringify(slipsAsJson(file, ride.startedAtMs, analysis))
		: slipsAsTable(basename(file), analysis);
	process.stdout.write(`${text}\n`);
	return 0;
}

function readWhole(file: string): Uint8Array {
	try {
		return readFileSync(file);
	} catch (error) {
		const { code } = error as NodeJS.ErrnoException;
		if (code === 'ENOENT') throw new Error(`There is no file ${file}.`, { cause: error });
		if (code === 'EISDIR')
			throw new Error(`${file} is a folder; name one ride file in it.`, { cause: error });
		throw new Error(`${file} cannot be read (${code ?? String(error)}).`, { cause: error });
	}
}

main(process.argv.slice(2)).then(
	(code) => (process.exitCode = code),
	(error: unknown) => {
		const sentence =
			error instanceof RideRefused
				? `${error.sentence} (${error.code}: ${error.detail})`
				: String(error instanceof Error ? error.message : error);
		process.stderr.write(`${sentence}\n`);
		process.exitCode = 1;
	}
);
