import { dateFormat, dateWriter, kept, numberWriter } from './intlFormats';

/**
 * Decimals follow one rule: what is measured or computed has as many as its size bears, noughts at the end too,
 * since they say how finely it is known (`km`, `number`, `figure`); what somebody set or wrote down has its own and
 * no more (`set`, `kmSet`): a limit of 5, 12.5 Nm beside 12 Nm.
 *
 * How this user reads numbers and instants: one locale (the browser's, told to the server as well, so
 * that both render the same words) and one zone (the workshop's). Pages and charts get it from the
 * context of the layout.
 */
export interface Formats {
	readonly locale: string;
	/** IANA zone of the workshop */
	readonly zone: string;
	/** measured metres as kilometres with the unit: "61.4 km", "612 km"; nothing at all is "0 km" */
	readonly km: (metres: number) => string;
	/** metres as kilometres without the unit */
	readonly kmNumber: (metres: number) => string;
	/** metres that somebody set, as kilometres with the unit: "10 km", "12.5 km" */
	readonly kmSet: (metres: number) => string;
	/** a figure that somebody set or wrote down: its own decimals, at most so many (6 unless told); "not known" for NaN */
	readonly set: (value: number, most?: number) => string;
	/** a plain number with a fixed number of decimals; "not known" for NaN */
	readonly number: (value: number, decimals?: number) => string;
	/** a rate or ratio with one or two significant digits below 10 and one decimal above; what is small never reads as 0 */
	readonly figure: (value: number) => string;
	/** 0 to 1 as a whole percentage; never "100 %" or "0 %" for what is only nearly so */
	readonly share: (value: number) => string;
	/** seconds as "1:02:05" or "2:05"; tenths on demand */
	readonly clock: (seconds: number, tenths?: boolean) => string;
	/** an instant as day and time of day in the zone */
	readonly dateTime: (instant: string | number) => string;
	readonly date: (instant: string | number) => string;
	/** an instant in the local time that the ride recorded; in the workshop's zone when it did not */
	readonly rideTime: (instant: string, localOffsetMin: number | null) => string;
	readonly bytes: (count: number) => string;
}

/**
 * @param locale BCP 47 tag, e.g. "de-CH"; an unknown one falls back to "en-GB"
 * @param zone IANA zone, e.g. "Europe/Zurich"; an unknown one falls back to UTC
 * @example createFormats('en-GB', 'UTC').km(61440) // "61.4 km"
 */
export function createFormats(locale: string, zone: string): Formats {
	// a locale comes from outside: what is kept of it must be short
	return locale.length <= 40 ? shortNamed(locale, zone) : formatsFor(locale, zone);
}

const shortNamed = kept(formatsFor);

function formatsFor(locale: string, zone: string): Formats {
	const known = knownLocale(locale);
	const timeZone = knownZone(zone);
	/** writers by their number of decimals: each figure of a page asks for one */
	const fixed: ((value: number) => string)[] = [];
	const decimals = (value: number, digits: number) =>
		Number.isFinite(value)
			? // what rounds to nothing has no sign
				(fixed[digits] ??= numberWriter(known, digits, digits))(
					Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value
				)
			: 'not known';
	const set = (value: number, most = 6) =>
		Number.isFinite(value) ? numberWriter(known, 0, most)(value + 0) : 'not known';
	const kmDecimals = (metres: number) => (metres !== 0 && Math.abs(metres) < 99_950 ? 1 : 0);
	const kmNumber = (metres: number) => decimals(metres / 1000, kmDecimals(metres));
	const dateTimeIn = (instant: string | number, where: string) =>
		dateWriter(known, where, true)(new Date(instant).getTime());
	return {
		locale: known,
		zone: timeZone,
		km: (metres) => `${kmNumber(metres)}\u00a0km`,
		kmNumber,
		kmSet: (metres) => `${set(metres / 1000, kmDecimals(metres))}\u00a0km`,
		set,
		number: (value, digits = 0) => decimals(value, digits),
		figure: (value) => {
			const tiny = value !== 0 && Math.abs(value) < LEAST_FIGURE;
			if (tiny) return value > 0 ? `below ${set(LEAST_FIGURE)}` : `above ${set(-LEAST_FIGURE)}`;
			return decimals(value, figureDecimals(value));
		},
		share: (value) => share(value, known),
		clock,
		dateTime: (instant) => dateTimeIn(instant, timeZone),
		date: (instant) => dateWriter(known, timeZone, false)(new Date(instant).getTime()),
		rideTime: (instant, offsetMin) =>
			offsetMin === null
				? dateTimeIn(instant, timeZone)
				: dateTimeIn(Date.parse(instant) + offsetMin * 60_000, 'UTC'),
		bytes: (count) =>
			count < 950_000 ? `${decimals(count / 1000, 0)}\u00a0kB` : `${decimals(count / 1e6, 1)}\u00a0MB`
	};
}

const LEAST_FIGURE = 0.001;

function figureDecimals(value: number): number {
	const size = Math.abs(value);
	if (size >= 100 || size === 0) return 0;
	if (size >= 1) return 1;
	if (size >= 0.1) return 2;
	return 3;
}

function share(value: number, locale: string): string {
	if (!Number.isFinite(value)) return 'not known';
	// what is only nearly all or nearly nothing must not read as all or nothing
	const whole = Math.round(value * 100);
	const percent = value < 1 && whole === 100 ? 99 : value > 0 && whole === 0 ? 1 : whole;
	return `${numberWriter(locale, 0, 0)(percent)}\u00a0%`;
}

function clock(seconds: number, tenths = false): string {
	const all = tenths ? Math.round(seconds * 10) / 10 : Math.round(seconds);
	const sign = all < 0 ? '−' : '';
	const size = Math.abs(all);
	const hours = Math.floor(size / 3600);
	const minutes = Math.floor((size % 3600) / 60);
	const rest = size % 60;
	const secondsText = (tenths ? rest.toFixed(1) : String(Math.floor(rest))).padStart(tenths ? 4 : 2, '0');
	return hours > 0
		? `${sign}${hours}:${String(minutes).padStart(2, '0')}:${secondsText}`
		: `${sign}${minutes}:${secondsText}`;
}

function knownLocale(locale: string): string {
	try {
		return Intl.getCanonicalLocales(locale)[0] ?? 'en-GB';
	} catch {
		return 'en-GB';
	}
}

function knownZone(zone: string): string {
	try {
		return dateFormat('en', zone, false).resolvedOptions().timeZone;
	} catch {
		return 'UTC';
	}
}
