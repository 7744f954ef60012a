import {
	AGE_CLOCKS,
	buildAgainstBuild,
	currentAnalysisVersion,
	LedgerRefusal,
	listBuilds,
	openLedger,
	readConfig,
	splitFlags,
	type Ledger
} from '$lib/server';
import { evidenceAsText } from './evidence/evidenceAsText';

const USAGE =
	'npm run --silent evidence -- --before BUILD --after BUILD [--count slips|episodes] [--age CLOCK] [--corrected] [--json] [--data FOLDER]';

/**
 * Sets one build against another in the terminal: the figures of the page "Build against build", from the
 * same functions. Nothing is written to the ledger.
 */
function main(argv: readonly string[]): void {
	const asJson = argv.includes('--json');
	const corrected = argv.includes('--corrected');
	const { flags, rest } = splitFlags(
		argv.filter((argument) => argument !== '--json' && argument !== '--corrected'),
		['before', 'after', 'count', 'age', 'data']
	);
	if (rest.length > 0 || !flags.before || !flags.after)
		throw new LedgerRefusal('wrong-value', `Name both builds. Usage: ${USAGE}`);
	const unit = flags.count ?? 'slips';
	if (unit !== 'slips' && unit !== 'episodes')
		throw new LedgerRefusal('wrong-value', `--count takes slips or episodes, not ${unit}.`);
	const age = AGE_CLOCKS.find((clock) => clock === (flags.age ?? 'build'));
	if (!age) throw new LedgerRefusal('wrong-value', `--age takes ${AGE_CLOCKS.join(', ')}; not ${flags.age}.`);
	const config = readConfig(process.env, flags.data ? ['--data', flags.data] : []);
	const ledger = openLedger(config.dataFolder, { migrate: false });
	try {
		const builds = [named(ledger, flags.before), named(ledger, flags.after)];
		if (builds[0].id === builds[1].id)
			throw new LedgerRefusal('wrong-value', 'A build cannot be set against itself.');
		const told = buildAgainstBuild(ledger, builds, {
			unit,
			shown: 'found',
			age,
			detection: corrected ? 'corrected' : 'as found'
		});
		const analysisVersion = currentAnalysisVersion(ledger);
		const text = asJson
			? JSON.stringify({ analysisVersion, before: builds[0].name, after: builds[1].name, ...told })
			: evidenceAsText(told, analysisVersion);
		process.stdout.write(`${text}\n`);
	} finally {
		ledger.close();
	}
}

function named(ledger: Ledger, name: string): { id: number; name: string } {
	const builds = listBuilds(ledger);
	const found = builds.find((build) => build.name.toLowerCase() === name.toLowerCase());
	if (found) return { id: found.id, name: found.name };
	const known = builds.map((build) => `"${build.name}"`).join(', ');
	throw new LedgerRefusal(
		'not-found',
		known
			? `There is no build "${name}". There are ${known}.`
			: `There is no build "${name}": the ledger has none.`
	);
}

try {
	main(process.argv.slice(2));
} catch (error) {
	const sentence =
		error instanceof LedgerRefusal ? error.sentence : error instanceof Error ? error.message : String(error);
	process.stderr.write(`${sentence}\n`);
	process.exitCode = 1;
}
