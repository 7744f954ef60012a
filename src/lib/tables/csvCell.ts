/** what a spreadsheet would take for the beginning of a formula */
// eslint-disable-next-line no-control-regex
const FORMULA = /^[\s\u0000-\u001f]*[=+\-@]/;

/**
 * One cell of a comma-separated file. Text that a spreadsheet would run as a formula gets an apostrophe
 * before it: names and notes come from whoever wrote them. Numbers are rounded to nine digits.
 *
 * @example csvCell('=1+1') // "'=1+1"
 */
export function csvCell(value: string | number | null | undefined): string {
	if (value === null || value === undefined) return '';
	if (typeof value === 'number') return Number.isFinite(value) ? String(Number(value.toPrecision(9))) : '';
	const safe = FORMULA.test(value) ? `'${value}` : value;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
