import { cleanFileName } from '$lib/server/store/cleanFileName';
import { csvCell } from '$lib/tables/csvCell';
import { oneOf, type Pick } from './seeded';

const PIECES = [
	'ride',
	'.fit',
	'.csv',
	'../',
	'..\\',
	'/',
	'C:',
	'\0',
	'\n',
	'\u202E',
	'\u200F',
	'שלום',
	'🚲',
	'👩‍🔧',
	'\uD800',
	'<script>alert(1)</script>',
	'<img src=x onerror=alert(1)>',
	'"\'`',
	'=cmd|1',
	'+1',
	'@x',
	'CON',
	'nul.',
	'%2e%2e%2f',
	'x'.repeat(4096),
	' ',
	'.'
];

/** A name as nobody honest would give it. */
export function hostileName(pick: Pick): string {
	return Array.from({ length: 1 + pick(6) }, () => oneOf(pick, PIECES)).join('');
}

/** What is shown and offered for saving is one plain name, whatever came. */
export async function judgeName(pick: Pick): Promise<void> {
	const name = hostileName(pick);
	const cleaned = cleanFileName(name);
	// eslint-disable-next-line no-control-regex
	const forbidden = /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff<>:"|?*`$;&/\\]/;
	if (cleaned.length === 0 || cleaned.length > 120) throw new Error(`${cleaned.length} characters`);
	if (forbidden.test(cleaned)) throw new Error(`left in: ${JSON.stringify(cleaned)}`);
	if (/^[.=+\-@]/.test(cleaned))
		throw new Error(`begins like a formula or hidden: ${JSON.stringify(cleaned)}`);
	if (/^(con|nul)(\.|$)/i.test(cleaned)) throw new Error(`a name of the system: ${cleaned}`);
	if (!cleaned.isWellFormed()) throw new Error('half a character');
	if (cleanFileName(cleaned) !== cleaned) throw new Error('cleaning twice changes it');
	// in a table for a spreadsheet no cell is a formula
	if (/^"?[=+\-@\t\r]/.test(csvCell(name))) throw new Error(`a formula: ${JSON.stringify(csvCell(name))}`);
}
