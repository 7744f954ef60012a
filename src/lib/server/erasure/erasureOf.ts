import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { toInstant } from '../ledger/instants';
import { OLD_LAYOUTS } from '../ledger/backupBeforeMigration';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { Instant } from '../views';
import { leftoversOf, type Leftovers } from './leftoversOf';

/** What an erasure of one rider's files would take away, and what it cannot reach. */
export interface ErasureView {
	person: { id: number; name: string; code: string; anonymised: boolean };
	/** SHA-256 of each file that goes */
	files: string[];
	/** those of them that are rides; their figures stay */
	rides: number;
	/** those of them that are pictures and documents which the person attached */
	attached: number;
	/** archives, half-sent uploads and names of files that became none of those above */
	leftovers: Leftovers;
	/** files and archives that are being read or come in just now: nothing is erased before they are done */
	beingRead: number;
	/** erased before */
	erasedBefore: number;
	/** copies made before: they still hold the files or the names */
	copies: CopyMade[];
}

export interface CopyMade {
	what: 'backup' | 'copy before a change of layout' | 'export';
	/** where, as far as this ledger knows */
	where: string;
	lastAt: Instant | null;
}

interface FileRow {
	sha256: string;
	rideId: number | null;
	attached: number;
	reading: number;
}

/**
 * Files of a rider: rides ridden by that person, rides without a named rider that the person handed in, and
 * files of theirs that became no ride. Invented rides are none.
 */
const FILES = `SELECT s.sha256, r.id AS rideId, 0 AS attached,
	EXISTS (SELECT 1 FROM import i WHERE i.sha256 = s.sha256 AND i.stage IN ('waiting', 'analysing')) AS reading
	FROM source s LEFT JOIN ride r ON r.sha256 = s.sha256
	WHERE (r.rider_id = @person OR (r.rider_id IS NULL AND s.stored_by = @person))
		AND coalesce(r.example, 0) = 0
		AND (r.id IS NOT NULL OR EXISTS
			(SELECT 1 FROM import i WHERE i.sha256 = s.sha256 AND i.example = 0))
		AND NOT EXISTS (SELECT 1 FROM attachment a WHERE a.sha256 = s.sha256)
		AND NOT EXISTS (SELECT 1 FROM erased_source e WHERE e.sha256 = s.sha256)
	ORDER BY s.sha256`;

/**
 * What the person attached and nobody else did: a photo carries the place where it was taken. What is a ride's file
 * as well is none of them.
 */
const ATTACHED = `SELECT DISTINCT a.sha256, NULL AS rideId, 1 AS attached, 0 AS reading
	FROM attachment a
	WHERE a.by = @person AND a.example = 0
		AND NOT EXISTS (SELECT 1 FROM attachment o WHERE o.sha256 = a.sha256 AND o.by <> @person)
		AND NOT EXISTS (SELECT 1 FROM ride r WHERE r.sha256 = a.sha256)
		AND NOT EXISTS (SELECT 1 FROM erased_source e WHERE e.sha256 = a.sha256)
	ORDER BY a.sha256`;

/**
 * @throws LedgerRefusal not-found
 */
export function erasureOf(ledger: Ledger, personId: number): ErasureView {
	const person = ledger.database
		.prepare<[number], { id: number; name: string; code: string; anonymised: number }>(
			'SELECT id, name, code, anonymised_ms IS NOT NULL AS anonymised FROM person WHERE id = ?'
		)
		.get(personId);
	if (!person) throw new LedgerRefusal('not-found', 'There is no such person.');
	const files = [FILES, ATTACHED].flatMap((sql) =>
		ledger.database.prepare<[object], FileRow>(sql).all({ person: personId })
	);
	const hashes = files.map(({ sha256 }) => sha256);
	const leftovers = leftoversOf(ledger, personId, hashes);
	return {
		person: { ...person, anonymised: person.anonymised === 1 },
		files: hashes,
		leftovers,
		rides: files.filter(({ rideId }) => rideId !== null).length,
		attached: files.filter(({ attached }) => attached === 1).length,
		beingRead: files.filter(({ reading }) => reading === 1).length + leftovers.beingRead,
		erasedBefore: ledger.database
			.prepare<[object], { n: number }>(
				`SELECT count(*) AS n FROM erased_source e JOIN source s ON s.sha256 = e.sha256
				LEFT JOIN ride r ON r.sha256 = s.sha256
				WHERE r.rider_id = @person OR (r.rider_id IS NULL AND s.stored_by = @person)`
			)
			.get({ person: personId })!.n,
		copies: copiesMade(ledger)
	};
}

/** Every place that a copy went to, as the trail and the folder tell. */
export function copiesMade(ledger: Ledger): CopyMade[] {
	const noted = ledger.database
		.prepare<[], { action: string; place: string; atMs: number }>(
			`SELECT action, coalesce(json_extract(detail, '$.folder'), subject_id) AS place, max(at_ms) AS atMs
			FROM trail WHERE subject = 'ledger' AND (action = 'backed up' OR (action = 'exported'
				AND (json_extract(detail, '$.sources') = 1 OR json_extract(detail, '$.names') = 1)))
			GROUP BY action, place ORDER BY action, place`
		)
		.all();
	return [
		...noted.map(({ action, place, atMs }): CopyMade => {
			const what = action === 'backed up' ? 'backup' : 'export';
			return { what, where: place, lastAt: toInstant(atMs) };
		}),
		...oldLayouts(ledger.folder).map((where): CopyMade => ({
			what: 'copy before a change of layout',
			where,
			lastAt: null
		}))
	];
}

function oldLayouts(dataFolder: string): string[] {
	try {
		return readdirSync(join(dataFolder, OLD_LAYOUTS))
			.sort()
			.map((name) => join(OLD_LAYOUTS, name));
	} catch {
		return [];
	}
}
