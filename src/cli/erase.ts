import {
	actorOf,
	anonymisePerson,
	compactLedger,
	eraseRider,
	erasureOf,
	LedgerRefusal,
	listPeople,
	openLedger,
	readConfig,
	splitFlags,
	type Ledger
} from '$lib/server';
import { sentenceOf } from './archive/sentenceOf';
import { splitSwitches } from './archive/splitSwitches';

const USAGE = 'npm run erase -- NAME or CODE --reason "..." [--yes] [--keep-name] [--data FOLDER]';

/** Takes a rider's files and name out of the ledger for good; without --yes it only says what would go. */
function main(args: readonly string[]): void {
	const { on, argv } = splitSwitches(args, ['yes', 'keep-name']);
	const { flags, rest } = splitFlags(argv, ['data', 'reason']);
	if (rest.length !== 1) throw new LedgerRefusal('wrong-value', `Name one person. Usage: ${USAGE}`);
	const config = readConfig(process.env, flags.data ? ['--data', flags.data] : []);
	const ledger = openLedger(config.dataFolder, { migrate: false });
	try {
		const people = listPeople(ledger);
		const wanted = rest[0].toLowerCase();
		const person = people.find(
			({ name, code }) => name.toLowerCase() === wanted || code.toLowerCase() === wanted
		);
		if (!person) throw new LedgerRefusal('not-found', 'There is no person with that name or code.');
		const owner = people.find(({ role }) => role === 'owner');
		if (!owner) throw new LedgerRefusal('not-allowed', 'This ledger has no owner.');
		const { files, rides, attached, leftovers, copies } = erasureOf(ledger, person.id);
		if (!on.has('yes')) {
			say(
				`${files.length} files of ${person.code} would be erased: ${rides} rides, ${attached} attached pictures or documents.`
			);
			const { archives, uploads, named } = leftovers;
			if (archives.length + uploads.length + named > 0)
				say(
					`Also ${archives.length} archives that were not unpacked, ${uploads.length} uploads that broke off, names of ${named} files that became no ride.`
				);
			say('Figures of the rides stay; strips and tracks go for good, and no later analysis can read them.');
			return say('Nothing was changed: give --yes and --reason "..." to do it.');
		}
		const actor = actorOf(owner);
		const outcome = eraseRider(ledger, actor, { personId: person.id, reason: flags.reason ?? '' });
		say(`${outcome.files} files are erased; ${outcome.rides} rides keep their figures.`);
		if (outcome.leftovers > 0)
			say(`${outcome.leftovers} archives, uploads and names of other files went too.`);
		if (!on.has('keep-name')) sayName(ledger, actor, person.id);
		say(
			compactLedger(ledger)
				? 'Both databases were written anew.'
				: 'The databases are in use and were not written anew; do so once with the server stopped.'
		);
		for (const { what, where } of copies) say(`Not reached: ${what} (${where}).`);
	} finally {
		ledger.close();
	}
}

function sayName(ledger: Ledger, actor: ReturnType<typeof actorOf>, personId: number): void {
	try {
		const found = anonymisePerson(ledger, actor, personId);
		say('The name is out of the ledger.');
		for (const { table, column, rows } of found)
			say(`Also written by hand: ${table}, ${column} (${rows}); look at these yourself.`);
	} catch (error) {
		if (!(error instanceof LedgerRefusal)) throw error;
		say(`The name: ${error.sentence}`);
	}
}

function say(line: string): void {
	process.stdout.write(`${line.replace(/\p{Cc}/gu, '?')}\n`);
}

try {
	main(process.argv.slice(2));
} catch (error) {
	process.stderr.write(`${sentenceOf(error)}\n`);
	process.exitCode = 1;
}
