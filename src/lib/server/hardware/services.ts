import type { Actor } from '../actor';
import { checkNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { noteOnWheel } from './noteOnWheel';

/** A hub that was opened, cleaned or greased; it has its own clock. */
export interface ServiceRecord {
	id: number;
	wheelId: number;
	atMs: number;
	opened: number;
	cleaned: number;
	/** '' = none put in */
	lubricant: string;
	amountG: number | null;
	/** which parts were turned over or moved round; '' = none */
	partsTurned: string;
	note: string;
	/** code of the person who wrote it down */
	byCode: string;
}

/** The services that stand, of one wheel or of all, in order of time. */
export function listServices(ledger: Ledger, wheelId?: number): ServiceRecord[] {
	return ledger.database
		.prepare<[{ wheelId: number | null }], ServiceRecord>(
			`SELECT s.id, s.wheel_id AS wheelId, s.at_ms AS atMs, s.opened, s.cleaned, s.lubricant,
				s.amount_g AS amountG, s.parts_turned AS partsTurned, s.note, p.code AS byCode
			FROM service s JOIN person p ON p.id = s.by_id
			WHERE s.withdrawn_ms IS NULL AND (@wheelId IS NULL OR s.wheel_id = @wheelId) ORDER BY s.at_ms, s.id`
		)
		.all({ wheelId: wheelId ?? null });
}

export interface ServiceInput {
	/** ISO 8601 with its zone */
	at: string;
	opened: boolean;
	cleaned: boolean;
	lubricant?: string;
	/** grams, more than 0 and at most 200 */
	amountG?: number | null;
	partsTurned?: string;
	note?: string;
}

/**
 * @returns id of the new service
 * @throws LedgerRefusal wrong-value, also when nothing was done; not-found
 */
export function recordService(
	ledger: Ledger,
	actor: Actor,
	wheelId: number,
	input: ServiceInput,
	options: { example?: boolean } = {}
): number {
	const lubricant = checkText('The lubricant', input.lubricant, { min: 0, max: 120 });
	const amountG = checkNumber('The amount of lubricant', input.amountG, { min: 0.01, max: 200, unit: 'g' });
	const partsTurned = checkText('What was turned', input.partsTurned, { min: 0, max: 300 });
	if (!input.opened && !input.cleaned && lubricant === '' && partsTurned === '')
		throw new LedgerRefusal('wrong-value', 'Say what was done: opened, cleaned, lubricated or turned.');
	if (amountG !== null && lubricant === '')
		throw new LedgerRefusal('wrong-value', `Say which lubricant the ${amountG} g were.`);
	return noteOnWheel(
		ledger,
		actor,
		{ table: 'service', word: 'service' },
		{ wheelId, at: input.at },
		{
			opened: input.opened ? 1 : 0,
			cleaned: input.cleaned ? 1 : 0,
			lubricant,
			amount_g: amountG,
			parts_turned: partsTurned,
			note: checkText('The note', input.note, { min: 0, max: 1000 })
		},
		options
	);
}
