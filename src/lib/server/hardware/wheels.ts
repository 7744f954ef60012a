import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { refuseTakenName } from './refuseTakenName';

export interface WheelRecord {
	id: number;
	name: string;
	hub: string;
	circumferenceM: number | null;
	/** 1 = a reference wheel that does not slip */
	knownGood: number;
	example: number;
}

const SELECT =
	'SELECT id, name, hub, circumference_m AS circumferenceM, known_good AS knownGood, example FROM wheel';

export function listWheelRecords(ledger: Ledger): WheelRecord[] {
	return ledger.database.prepare<[], WheelRecord>(`${SELECT} ORDER BY name`).all();
}

/** @throws LedgerRefusal not-found */
export function findWheel(ledger: Ledger, wheelId: number): WheelRecord {
	const wheel = ledger.database.prepare<[number], WheelRecord>(`${SELECT} WHERE id = ?`).get(wheelId);
	if (!wheel) throw new LedgerRefusal('not-found', 'There is no such wheel.');
	return wheel;
}

export interface WheelInput {
	name: string;
	/** hub in the workshop's words */
	hub: string;
	/** rolled circumference of the tyre, metres, 0.5 to 4 */
	circumferenceM?: number | null;
}

/**
 * @returns id of the new wheel
 * @throws LedgerRefusal wrong-value; conflict when another wheel has this name
 */
export function createWheel(
	ledger: Ledger,
	actor: Actor,
	input: WheelInput,
	options: { example?: boolean } = {}
): number {
	const name = checkText("The wheel's name", input.name, { min: 1, max: 120 });
	const hub = checkText("The hub's description", input.hub, { min: 0, max: 500 });
	const circumferenceM = input.circumferenceM ?? null;
	if (circumferenceM !== null && !(circumferenceM >= 0.5 && circumferenceM <= 4))
		throw new LedgerRefusal('wrong-value', 'A tyre rolls 0.5 to 4 metres in one turn.');
	return ledger.database
		.transaction((): number => {
			refuseTakenName(ledger, 'wheel', name);
			const { lastInsertRowid } = ledger.database
				.prepare('INSERT INTO wheel (name, hub, circumference_m, example, created_ms) VALUES (?, ?, ?, ?, ?)')
				.run(name, hub, circumferenceM, options.example ? 1 : 0, ledger.now());
			leaveTrail(ledger, actor, 'created', 'wheel', Number(lastInsertRowid), { name });
			return Number(lastInsertRowid);
		})
		.immediate();
}
