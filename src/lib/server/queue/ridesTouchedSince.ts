import type { Ledger } from '../ledger/openLedger';

/** Subjects of the trail whose changes say nothing about the bike of any ride. */
const ELSEWHERE = ['event', 'lap', 'source', 'import', 'person', 'review', 'felt slip'];
/** With more rides than these all are as quickly looked at. */
const MANY = 200;

/**
 * Rides whose bike may be told otherwise since an entry of the trail, where the entries after it are about single
 * rides alone. In a full ledger looking at every ride takes a tenth of a second, and a file that is handed in or a
 * verdict must not cost that.
 *
 * @param trail newest entry that was seen
 * @returns ids of rides; null = something else changed (a bike, a wheel ...), so any ride may be concerned
 */
export function ridesTouchedSince(ledger: Ledger, trail: number): number[] | null {
	const touched = ledger.database
		.prepare<[number, string], { subject: string; id: string }>(
			`SELECT DISTINCT subject, subject_id AS id FROM trail
			WHERE id > ? AND subject NOT IN (SELECT value FROM json_each(?)) LIMIT ${MANY + 1}`
		)
		.all(trail, JSON.stringify(ELSEWHERE));
	if (touched.length > MANY || touched.some(({ subject }) => subject !== 'ride')) return null;
	return touched.map(({ id }) => Number(id));
}
