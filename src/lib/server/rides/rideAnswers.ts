import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { SURFACES, type Surface } from './surfaces';

/** what is not named stays as it is; null takes a hand-made answer back ("not said") */
export interface RideAnswers {
	wheelId?: number | null;
	/** only where wheel and time do not tell, or tell wrongly; of a ride across a change: the whole ride */
	buildId?: number | null;
	riderId?: number | null;
	bikeId?: number | null;
	surface?: Surface | null;
	/** luggage or trailer, kg, 0 to 300 */
	loadKg?: number | null;
	trainer?: boolean | null;
	/** a motor helped */
	motor?: boolean | null;
	wet?: boolean | null;
	/** the rider's word: a lap was pressed when a slip was felt */
	lapsMeanSlips?: boolean | null;
}
export type AnswerName = keyof RideAnswers;
export type StoredAnswer = string | number | null;

/** answer -> column; the names of columns come from here and nowhere else */
export const ANSWER_COLUMNS: Readonly<Record<AnswerName, string>> = {
	wheelId: 'wheel_id',
	buildId: 'chosen_build_id',
	riderId: 'rider_id',
	bikeId: 'bike_id',
	surface: 'surface',
	loadKg: 'load_kg',
	trainer: 'trainer',
	motor: 'motor_said',
	wet: 'wet',
	lapsMeanSlips: 'laps_mean_slips'
};
export const ANSWER_NAMES = Object.keys(ANSWER_COLUMNS) as AnswerName[];

/** answer -> table and what it is called in a refusal */
const REFERS_TO: Partial<Record<AnswerName, [table: string, word: string]>> = {
	wheelId: ['wheel', 'wheel'],
	buildId: ['build', 'build'],
	riderId: ['person', 'rider'],
	bikeId: ['bike', 'bike']
};
const MOST_LOAD_KG = 300;

/**
 * An answer as its column holds it.
 *
 * @throws LedgerRefusal not-found for a wheel, build, rider or bike that is not there; wrong-value for the
 *   rest
 */
export function storedAnswer(ledger: Ledger, name: AnswerName, value: unknown): StoredAnswer {
	if (value === null) return null;
	const refersTo = REFERS_TO[name];
	if (refersTo) return existing(ledger, refersTo, value);
	if (name === 'surface') {
		if ((SURFACES as readonly unknown[]).includes(value)) return value as Surface;
		throw new LedgerRefusal('wrong-value', `A surface is one of: ${SURFACES.join(', ')}.`);
	}
	if (name === 'loadKg') {
		if (typeof value === 'number' && value >= 0 && value <= MOST_LOAD_KG) return value;
		throw new LedgerRefusal('wrong-value', `The load is a number of kilograms from 0 to ${MOST_LOAD_KG}.`);
	}
	if (typeof value === 'boolean') return Number(value);
	throw new LedgerRefusal('wrong-value', 'Say yes, no, or nothing.');
}

function existing(ledger: Ledger, [table, word]: [string, string], id: unknown): number {
	const row =
		Number.isSafeInteger(id) && ledger.database.prepare(`SELECT 1 FROM ${table} WHERE id = ?`).get(id);
	if (!row) throw new LedgerRefusal('not-found', `There is no such ${word}.`);
	return id as number;
}
