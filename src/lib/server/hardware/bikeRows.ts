import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { byName } from './byName';

export const SPEED_SENSORS = ['rear hub', 'front hub', 'GPS'] as const;
export type SpeedSensorPlace = (typeof SPEED_SENSORS)[number];

/** where power is measured; "one side doubled" = one crank or pedal measured, times two */
export const POWER_PLACES = ['crank', 'pedals', 'one side doubled', 'hub', 'none'] as const;
export type PowerPlace = (typeof POWER_PLACES)[number];

/** A bike as the workshop states it; null = not said. */
export interface BikeRecord {
	id: number;
	name: string;
	/** teeth, smallest first */
	chainrings: readonly number[] | null;
	cassette: readonly number[] | null;
	/** rolled circumference of the driven tyre where its wheel states none, metres */
	circumferenceM: number | null;
	speedSensor: SpeedSensorPlace | null;
	powerFrom: PowerPlace | null;
	motor: boolean | null;
	example: boolean;
	rowVersion: number;
}

interface StoredBike extends Omit<BikeRecord, 'chainrings' | 'cassette' | 'motor' | 'example'> {
	chainrings: string | null;
	cassette: string | null;
	motor: number | null;
	example: number;
}

const SELECT = `SELECT id, name, chainrings, cassette, circumference_m AS circumferenceM,
	speed_sensor AS speedSensor, power_from AS powerFrom, motor, example, row_version AS rowVersion FROM bike`;

export function listBikeRecords(ledger: Ledger): BikeRecord[] {
	return ledger.database.prepare<[], StoredBike>(SELECT).all().map(toRecord).sort(byName);
}

/** @throws LedgerRefusal not-found */
export function findBike(ledger: Ledger, bikeId: number): BikeRecord {
	const bike = ledger.database.prepare<[number], StoredBike>(`${SELECT} WHERE id = ?`).get(bikeId);
	if (!bike) throw new LedgerRefusal('not-found', 'There is no such bike.');
	return toRecord(bike);
}

function toRecord(stored: StoredBike): BikeRecord {
	return {
		...stored,
		chainrings: teethOf(stored.chainrings),
		cassette: teethOf(stored.cassette),
		motor: stored.motor === null ? null : stored.motor === 1,
		example: stored.example === 1
	};
}

/** Teeth as stored; null when they were not stated. */
export function teethOf(stored: string | null): readonly number[] | null {
	return stored === null ? null : (JSON.parse(stored) as number[]);
}
