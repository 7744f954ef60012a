import { keepAnswers } from './keepAnswers';

/** the browser's language comes from outside: more different ones than this and the oldest are let go */
const KEPT = 200;

/**
 * A format for numbers. Making one takes a hundred times as long as writing a number with it,
 * and a page writes thousands: they are kept.
 *
 * @param locale canonical BCP 47 tag; @param least decimals that are always written; @param most 0 to 20
 * @example numberFormat('de-CH', 1, 1).format(1234.56) // "1’234.6"
 */
export const numberFormat = kept(
	(locale: string, least: number, most: number) =>
		new Intl.NumberFormat(locale, { minimumFractionDigits: least, maximumFractionDigits: most })
);

/**
 * A format for days, with the time of day or without.
 *
 * @param locale canonical BCP 47 tag; @param timeZone IANA zone
 */
export const dateFormat = kept(
	(locale: string, timeZone: string, withTime: boolean) =>
		new Intl.DateTimeFormat(locale, {
			dateStyle: 'medium',
			...(withTime ? { timeStyle: 'short' } : {}),
			timeZone
		})
);

/**
 * Writes numbers by `numberFormat`, with one sign for "less than nothing", as wide as a plus: some languages' own
 * formats write a hyphen.
 *
 * @example numberWriter('en-GB', 1, 1)(-1234.56) // "−1,234.6"
 */
export const numberWriter = kept((locale: string, least: number, most: number) => {
	const format = numberFormat(locale, least, most);
	return keepAnswers((value) => format.format(value).replace('-', '−'));
});

/** Writes instants, milliseconds since 1970 UTC, by `dateFormat`. */
export const dateWriter = kept((locale: string, timeZone: string, withTime: boolean) => {
	const format = dateFormat(locale, timeZone, withTime);
	return keepAnswers((ms) => format.format(ms));
});

/** A function that remembers what it made, for at most `KEPT` different questions. */
export function kept<Asked extends readonly (string | number | boolean)[], Format>(
	make: (...asked: Asked) => Format
): (...asked: Asked) => Format {
	const made = new Map<string, Format>();
	return (...asked) => {
		const name = asked.join(' ');
		let format = made.get(name);
		if (!format) {
			if (made.size >= KEPT) made.delete(made.keys().next().value!);
			made.set(name, (format = make(...asked)));
		}
		return format;
	};
}
