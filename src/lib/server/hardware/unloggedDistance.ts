import { buildAtInstant } from '$lib/hardware/buildAtInstant';
import type { Actor } from '../actor';
import { checkNeededNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import type { Ledger } from '../ledger/openLedger';
import { noteOnWheel } from './noteOnWheel';
import { listPeriods } from './periodRows';

export interface UnloggedRecord {
	id: number;
	wheelId: number;
	/** by this instant it was ridden */
	atMs: number;
	distanceM: number;
	note: string;
	byCode: string;
}

/** Distance without a recording that stands, of one wheel or of all, in order of time. */
export function listUnloggedDistance(ledger: Ledger, wheelId?: number): UnloggedRecord[] {
	return ledger.database
		.prepare<[{ wheelId: number | null }], UnloggedRecord>(
			`SELECT u.id, u.wheel_id AS wheelId, u.at_ms AS atMs, u.distance_m AS distanceM, u.note,
				p.code AS byCode
			FROM unlogged_distance u JOIN person p ON p.id = u.by_id
			WHERE u.withdrawn_ms IS NULL AND (@wheelId IS NULL OR u.wheel_id = @wheelId)
			ORDER BY u.at_ms, u.distance_m, u.id`
		)
		.all({ wheelId: wheelId ?? null });
}

/**
 * What a build was ridden on a wheel without a recording: it ages the hardware and is never observed.
 * For `ageWindows`.
 */
export function unloggedOnBuild(
	ledger: Ledger,
	wheelId: number,
	buildId: number
): { atMs: number; distanceM: number }[] {
	const unlogged = listUnloggedDistance(ledger, wheelId);
	if (unlogged.length === 0) return [];
	const periods = listPeriods(ledger);
	return unlogged.filter(({ atMs }) => buildAtInstant(wheelId, atMs, periods) === buildId);
}

/**
 * @param input.distanceM metres, more than 0 and at most 100,000 km
 * @returns id of the new row
 * @throws LedgerRefusal wrong-value; not-found
 */
export function recordUnloggedDistance(
	ledger: Ledger,
	actor: Actor,
	wheelId: number,
	input: { at: string; distanceM: number | null; note?: string },
	options: { example?: boolean } = {}
): number {
	const km = input.distanceM === null ? null : input.distanceM / 1000;
	const distanceKm = checkNeededNumber('The distance', km, { min: 0.001, max: 1e5, unit: 'km' });
	return noteOnWheel(
		ledger,
		actor,
		{ table: 'unlogged_distance', word: 'unlogged distance' },
		{ wheelId, at: input.at },
		{ distance_m: distanceKm * 1000, note: checkText('The note', input.note, { min: 0, max: 500 }) },
		options
	);
}
