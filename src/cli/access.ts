import { PREFIX } from '$lib/address/prefix';
import {
	actorOf,
	choosePerson,
	endAccess,
	LedgerRefusal,
	listPeople,
	makeLink,
	openLedger,
	PASSWORD_LINK_MINUTES,
	readConfig,
	setPassword,
	splitFlags,
	type Ledger,
	type PersonView
} from '$lib/server';
import { readSecret } from './access/readSecret';
import { sentenceOf } from './archive/sentenceOf';

const USAGE =
	'npm run access -- set-password | link | end NAME or CODE [--data FOLDER] [--address https://...]';

/**
 * Who may come in, from the terminal of the machine: whoever can read and write the ledger's files needs no
 * further leave.
 */
async function main(args: readonly string[]): Promise<void> {
	const { flags, rest } = splitFlags(args, ['data', 'address']);
	const [what, name, ...more] = rest;
	if (!name || more.length > 0 || !['set-password', 'link', 'end'].includes(what))
		throw new LedgerRefusal('wrong-value', `Usage: ${USAGE}`);
	const config = readConfig(process.env, [
		...(flags.data ? ['--data', flags.data] : []),
		...(flags.address ? ['--address', flags.address] : [])
	]);
	const ledger = openLedger(config.dataFolder, { migrate: true });
	try {
		if (what === 'set-password') await askPassword(ledger, name);
		else if (what === 'link') printLink(ledger, name, config.address);
		else {
			const person = known(ledger, name);
			endAccess(ledger, owner(ledger), person.id);
			say(`${person.code} is out: no password, no link and no browser lets anybody in under that name.`);
		}
	} finally {
		ledger.close();
	}
}

async function askPassword(ledger: Ledger, name: string): Promise<void> {
	// the first person of a ledger is its owner; without one there is nobody else to ask
	const person = listPeople(ledger).some(isOwner) ? known(ledger, name) : choosePerson(ledger, name);
	const password = await readSecret(`Password for ${shown(person.name)}: `);
	if (password === null) throw new LedgerRefusal('wrong-value', 'Nothing was changed.');
	if (process.stdin.isTTY && password !== (await readSecret('The same again: ')))
		throw new LedgerRefusal('wrong-value', 'The two are not the same; nothing was changed.');
	await setPassword(ledger, actorOf(person), person.id, password);
	say(`The password of ${person.code} (${person.role}) is set.`);
}

function printLink(ledger: Ledger, name: string, address: string | null): void {
	const person = known(ledger, name);
	const { token } = makeLink(ledger, owner(ledger), person.id, 'password');
	say(`Opens once, for ${PASSWORD_LINK_MINUTES} minutes, to set the password of ${person.code}:`);
	say(`${address ?? 'http://ADDRESS-OF-THE-SERVER'}${PREFIX}/set-password#${token}`);
}

function known(ledger: Ledger, name: string): PersonView {
	const wanted = name.toLowerCase();
	const person = listPeople(ledger).find(
		(one) => one.name.toLowerCase() === wanted || one.code.toLowerCase() === wanted
	);
	if (!person) throw new LedgerRefusal('not-found', 'There is no person with that name or code.');
	return person;
}

function owner(ledger: Ledger) {
	const person = listPeople(ledger).find(isOwner);
	if (!person) throw new LedgerRefusal('not-allowed', 'This ledger has no owner yet.');
	return actorOf(person);
}

const isOwner = ({ role }: PersonView) => role === 'owner';
const shown = (text: string) => text.replace(/\p{Cc}/gu, '?');

function say(line: string): void {
	process.stdout.write(`${shown(line)}\n`);
}

try {
	await main(process.argv.slice(2));
} catch (error) {
	process.stderr.write(`${sentenceOf(error)}\n`);
	process.exitCode = 1;
}
