import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { generateSampleSet } from '../../sample-rides/generate';

const USAGE = 'npm run sample-rides [-- FOLDER]';

/** Generates the example workshop anew: ride files, programme.json and truth.json. */
function main(args: readonly string[]): void {
	if (args.length > 1 || args[0]?.startsWith('-')) throw new Error(`Usage: ${USAGE}`);
	const folder = resolve(args[0] ?? 'sample-rides');
	mkdirSync(folder, { recursive: true });
	const set = generateSampleSet();
	let bytes = 0;
	for (const [name, content] of set.files) {
		writeFileSync(join(folder, name), content);
		bytes += content.length;
	}
	writeFileSync(join(folder, 'programme.json'), `${JSON.stringify(set.programme, null, '\t')}\n`);
	writeFileSync(join(folder, 'truth.json'), `${JSON.stringify(set.truth, null, '\t')}\n`);
	process.stdout.write(
		`${set.files.size} ride files, ${(bytes / 1e6).toFixed(1)} MB, written to ${folder}\n`
	);
}

try {
	main(process.argv.slice(2));
} catch (error) {
	process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
	process.exitCode = 1;
}
