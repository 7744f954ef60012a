import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { storedAnswer } from '../rides/rideAnswers';
import type { Surface } from '../rides/surfaces';

/** What is known of a ride before its file is read; the ride starts with it. */
export interface RideHints {
	wheelId?: number | null;
	bikeId?: number | null;
	riderId?: number | null;
	trainer?: boolean | null;
	wet?: boolean | null;
	/** the rider says that a lap was pressed when a slip was felt */
	lapsMeanSlips?: boolean | null;
	surface?: Surface | null;
	/** luggage or trailer, kg */
	loadKg?: number | null;
}

/**
 * The hints as stored with an import.
 *
 * @throws LedgerRefusal not-found when the wheel, the bike or the rider does not exist; wrong-value for a surface or
 *   load that is none
 */
export function writeHints(ledger: Ledger, hints: RideHints): string {
	const kept: RideHints = {};
	if (hints.wheelId != null) kept.wheelId = existing(ledger, 'wheel', hints.wheelId);
	if (hints.bikeId != null) kept.bikeId = existing(ledger, 'bike', hints.bikeId);
	if (hints.riderId != null) kept.riderId = existing(ledger, 'person', hints.riderId);
	if (typeof hints.trainer === 'boolean') kept.trainer = hints.trainer;
	if (typeof hints.wet === 'boolean') kept.wet = hints.wet;
	if (typeof hints.lapsMeanSlips === 'boolean') kept.lapsMeanSlips = hints.lapsMeanSlips;
	if (hints.surface != null) kept.surface = storedAnswer(ledger, 'surface', hints.surface) as Surface;
	if (hints.loadKg != null) kept.loadKg = storedAnswer(ledger, 'loadKg', hints.loadKg) as number;
	return JSON.stringify(kept);
}

/** Reads stored hints; a wheel, bike or rider that was removed since is no hint any more. */
export function readHints(ledger: Ledger, stored: string): RideHints {
	const hints = JSON.parse(stored) as RideHints;
	if (hints.wheelId != null && !exists(ledger, 'wheel', hints.wheelId)) hints.wheelId = null;
	if (hints.bikeId != null && !exists(ledger, 'bike', hints.bikeId)) hints.bikeId = null;
	if (hints.riderId != null && !exists(ledger, 'person', hints.riderId)) hints.riderId = null;
	return hints;
}

function existing(ledger: Ledger, table: 'wheel' | 'bike' | 'person', id: number): number {
	if (!exists(ledger, table, id)) throw new LedgerRefusal('not-found', `There is no such ${table}.`);
	return id;
}

function exists(ledger: Ledger, table: 'wheel' | 'bike' | 'person', id: number): boolean {
	if (!Number.isSafeInteger(id)) return false;
	return ledger.database.prepare(`SELECT 1 FROM ${table} WHERE id = ?`).get(id) !== undefined;
}
