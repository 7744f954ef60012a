import type { Ledger } from '../ledger/openLedger';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import { isTruth, trailWord } from './trailWords';

const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?Z$/;
/** tables whose rows a value names by their id */
const NAMES: Readonly<Record<string, { table: string; column: string }>> = {
	wheelId: { table: 'wheel', column: 'name' },
	buildId: { table: 'build', column: 'name' },
	bikeId: { table: 'bike', column: 'name' },
	riderId: { table: 'person', column: 'code' },
	personId: { table: 'person', column: 'code' },
	actorId: { table: 'person', column: 'code' }
};
/** of people the trail shows codes only, whatever a row holds */
const OF_PEOPLE: ReadonlySet<string> = new Set(['name', 'weightKg']);
const LONGEST = 300;

/** Turns stored values into words; looks names up once a page. */
export function trailValues(ledger: Ledger, subject: string): (name: string, value: unknown) => string {
	const known = new Map<string, string>();
	return function words(name, value): string {
		if (subject === 'person' && OF_PEOPLE.has(name)) return 'not shown here';
		if (value === null || value === undefined || value === '') return 'nothing';
		if (name in NAMES && typeof value === 'number') return nameOf(ledger, known, name, value);
		if (isTruth(name) && (value === 0 || value === 1)) return value === 1 ? 'yes' : 'no';
		if (typeof value === 'boolean') return value ? 'yes' : 'no';
		if (typeof value === 'number') return numberWords(ledger, name, value);
		if (typeof value === 'string')
			return INSTANT.test(value) ? inWorkshopZone(ledger, Date.parse(value)) : cut(value);
		if (Array.isArray(value))
			return value.length === 0 ? 'nothing' : cut(value.map((item) => words(name, item)).join(', '));
		return cut(
			Object.entries(value as object)
				.map(([key, inner]) => `${trailWord(key)} ${words(key, inner)}`)
				.join('; ')
		);
	};
}

function nameOf(ledger: Ledger, known: Map<string, string>, name: string, id: number): string {
	const key = `${name} ${id}`;
	if (!known.has(key)) {
		const { table, column } = NAMES[name];
		const row = ledger.database
			.prepare<[number], { name: string }>(`SELECT ${column} AS name FROM ${table} WHERE id = ?`)
			.get(id);
		known.set(key, row?.name ?? `number ${id}, not in the ledger any more`);
	}
	return known.get(key)!;
}

function numberWords(ledger: Ledger, name: string, value: number): string {
	if (name.endsWith('Ms') || name === 'cuts') return inWorkshopZone(ledger, value);
	return String(Number(value.toPrecision(9)));
}

function cut(text: string): string {
	return text.length <= LONGEST ? text : `${text.slice(0, LONGEST)} …`;
}
