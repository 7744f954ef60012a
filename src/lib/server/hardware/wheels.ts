import { readTyreSize } from '$lib/hardware/tyreCircumference';
import type { Actor } from '../actor';
import { checkNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import { fromInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { teethOf } from './bikeRows';
import { byName } from './byName';
import { checkTeeth } from './checkTeeth';
import { refuseTakenName } from './refuseTakenName';

export interface WheelRecord {
	id: number;
	name: string;
	hub: string;
	/** '' = none written down */
	serial: string;
	/** distance between the locknut or end-cap faces, mm */
	overLocknutMm: number | null;
	/** axle standard in free words */
	axle: string;
	/** rim centre from the midplane of those faces, mm, + = towards the drive side */
	rimOffsetWantedMm: number | null;
	/** ISO 5775 designation, e.g. "40-622" */
	tyreEtrto: string | null;
	/** teeth of each sprocket, smallest first */
	cassette: readonly number[] | null;
	/** rolled circumference of the tyre as stated, metres */
	circumferenceM: number | null;
	/** nothing was fitted on it before; null = not written down */
	existsFromMs: number | null;
	/** 1 = a reference wheel that does not slip */
	knownGood: number;
	rowVersion: number;
	example: number;
}

const SELECT = `SELECT id, name, hub, serial, over_locknut_mm AS overLocknutMm, axle,
	rim_offset_wanted_mm AS rimOffsetWantedMm, tyre_etrto AS tyreEtrto, cassette,
	circumference_m AS circumferenceM, exists_from_ms AS existsFromMs, known_good AS knownGood,
	row_version AS rowVersion, example FROM wheel`;

type StoredWheel = Omit<WheelRecord, 'cassette'> & { cassette: string | null };
const toRecord = (stored: StoredWheel): WheelRecord => ({ ...stored, cassette: teethOf(stored.cassette) });

export function listWheelRecords(ledger: Ledger): WheelRecord[] {
	return ledger.database.prepare<[], StoredWheel>(SELECT).all().map(toRecord).sort(byName);
}

/** @throws LedgerRefusal not-found */
export function findWheel(ledger: Ledger, wheelId: number): WheelRecord {
	const wheel = ledger.database.prepare<[number], StoredWheel>(`${SELECT} WHERE id = ?`).get(wheelId);
	if (!wheel) throw new LedgerRefusal('not-found', 'There is no such wheel.');
	return toRecord(wheel);
}

/** Lengths in mm unless the name says otherwise; what is not given is not written down. */
export interface WheelInput {
	name: string;
	/** hub in the workshop's words */
	hub: string;
	serial?: string;
	/** 80 to 220 */
	overLocknutMm?: number | null;
	axle?: string;
	/** -30 to 30 */
	rimOffsetWantedMm?: number | null;
	/** ISO 5775 designation; '' or null = not said */
	tyreEtrto?: string | null;
	cassette?: readonly number[] | null;
	/** rolled circumference of the tyre, metres, 0.5 to 4 */
	circumferenceM?: number | null;
	/** ISO 8601; nothing was fitted on it before */
	existsFrom?: string | null;
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
	const facts = wheelFacts(ledger, input, options);
	return ledger.database
		.transaction((): number => {
			refuseTakenName(ledger, 'wheel', facts.name);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO wheel (name, hub, serial, over_locknut_mm, axle, rim_offset_wanted_mm, tyre_etrto,
						cassette, circumference_m, exists_from_ms, example, created_ms)
					VALUES (@name, @hub, @serial, @overLocknutMm, @axle, @rimOffsetWantedMm, @tyreEtrto, @cassette,
						@circumferenceM, @existsFromMs, @example, @now)`
				)
				.run({ ...facts, example: options.example ? 1 : 0, now: ledger.now() });
			leaveTrail(ledger, actor, 'created', 'wheel', Number(lastInsertRowid), { name: facts.name });
			return Number(lastInsertRowid);
		})
		.immediate();
}

/**
 * What of a wheel is stored, checked.
 *
 * @param options.example the invented workshop keeps its dates, whatever this machine's clock says
 */
export function wheelFacts(ledger: Ledger, input: WheelInput, options: { example?: boolean } = {}) {
	const tyreEtrto = input.tyreEtrto?.trim() || null;
	const size = tyreEtrto === null ? null : readTyreSize(tyreEtrto);
	if (tyreEtrto !== null && size === null)
		throw new LedgerRefusal(
			'wrong-value',
			`"${tyreEtrto}" is no tyre size by ISO 5775: width and rim diameter in mm, as in 40-622.`
		);
	const existsFromMs = input.existsFrom ? fromInstant(input.existsFrom) : null;
	if (existsFromMs !== null && existsFromMs > ledger.now() && !options.example)
		throw new LedgerRefusal('wrong-value', 'The wheel cannot exist only from a day that is still to come.');
	const cassette = checkTeeth('cassette', input.cassette);
	return {
		name: checkText("The wheel's name", input.name, { min: 1, max: 120 }),
		hub: checkText("The hub's description", input.hub, { min: 0, max: 500 }),
		serial: checkText('The serial', input.serial, { min: 0, max: 80 }),
		overLocknutMm: checkNumber('The over-locknut distance', input.overLocknutMm, {
			min: 80,
			max: 220,
			unit: 'mm'
		}),
		axle: checkText('The axle', input.axle, { min: 0, max: 120 }),
		rimOffsetWantedMm: checkNumber('The rim offset', input.rimOffsetWantedMm, {
			min: -30,
			max: 30,
			unit: 'mm'
		}),
		tyreEtrto: size && `${size.widthMm}-${size.rimMm}`,
		cassette: cassette && JSON.stringify(cassette),
		circumferenceM: checkNumber('The rolled circumference', input.circumferenceM, {
			min: 0.5,
			max: 4,
			unit: 'metres'
		}),
		existsFromMs
	};
}
