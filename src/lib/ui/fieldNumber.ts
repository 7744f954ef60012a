/**
 * A number as a field to fill in begins with it: in the reader's decimal sign, without marks between thousands, which
 * would not be read back.
 *
 * @param value null, undefined and NaN leave the field empty
 * @param most decimals at most
 * @example fieldNumber(1234.5, 'de-DE', 3) // "1234,5"
 */
export function fieldNumber(value: number | null | undefined, locale: string, most: number): string {
	return value === null || value === undefined || Number.isNaN(value)
		? ''
		: new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: most }).format(value);
}
