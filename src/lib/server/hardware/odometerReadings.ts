import type { Actor } from '../actor';
import { checkNeededNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import type { Ledger } from '../ledger/openLedger';
import { noteOnWheel } from './noteOnWheel';

export interface OdometerRecord {
	id: number;
	atMs: number;
	readingM: number;
	note: string;
	byCode: string;
}

/** The readings of a wheel that stand, in order of time. They check distances; none is made from them. */
export function listOdometerReadings(ledger: Ledger, wheelId: number): OdometerRecord[] {
	return ledger.database
		.prepare<[number], OdometerRecord>(
			`SELECT o.id, o.at_ms AS atMs, o.reading_m AS readingM, o.note, p.code AS byCode
			FROM odometer_reading o JOIN person p ON p.id = o.by_id
			WHERE o.withdrawn_ms IS NULL AND o.wheel_id = ? ORDER BY o.at_ms, o.id`
		)
		.all(wheelId);
}

/**
 * @param input.readingM what the counter showed, metres, 0 to 1,000,000 km
 * @returns id of the new reading
 * @throws LedgerRefusal wrong-value; not-found
 */
export function recordOdometer(
	ledger: Ledger,
	actor: Actor,
	wheelId: number,
	input: { at: string; readingM: number | null; note?: string },
	options: { example?: boolean } = {}
): number {
	const km = input.readingM === null ? null : input.readingM / 1000;
	const readingKm = checkNeededNumber('The reading', km, { min: 0, max: 1e6, unit: 'km' });
	return noteOnWheel(
		ledger,
		actor,
		{ table: 'odometer_reading', word: 'odometer reading' },
		{ wheelId, at: input.at },
		{ reading_m: readingKm * 1000, note: checkText('The note', input.note, { min: 0, max: 500 }) },
		options
	);
}
