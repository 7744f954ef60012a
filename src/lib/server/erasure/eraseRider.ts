import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { faultPoint } from '../store/faultPoint';
import { erasureOf, type CopyMade } from './erasureOf';
import { buryLeftovers } from './buryLeftovers';
import { finishErasures } from './finishErasures';
import { ERASED_NAME } from './leftoversOf';

export interface ErasureOutcome {
	files: number;
	rides: number;
	/** pictures and documents among the files */
	attached: number;
	/** given-up archives, half-sent uploads, names of files that became no ride */
	leftovers: number;
	/** made before: they still hold what was erased here */
	copies: CopyMade[];
}

/**
 * Takes a rider's files away for good: the bytes with positions and serial numbers (of rides, of what the person
 * attached, of archives and uploads that never became any), the traces made from them, their names in every table and in the trail. A tombstone stays for each (hash, when, who, why), and so do
 * the rides' figures, so that every rate and every signed decision can still be explained. The person's name
 * is taken out by `anonymisePerson`.
 *
 * @param reason why, without names
 * @throws LedgerRefusal not-allowed for anybody but an owner; not-found; wrong-value; conflict while a file is
 *   being read, or when there is nothing to erase
 */
export function eraseRider(
	ledger: Ledger,
	actor: Actor,
	input: { personId: number; reason: string }
): ErasureOutcome {
	if (actor.role !== 'owner')
		throw new LedgerRefusal('not-allowed', "Only an owner erases a rider's files; ask one.");
	const reason = checkText('The reason', input.reason, { min: 3, max: 400 });
	const outcome = ledger.database
		.transaction((): ErasureOutcome => {
			const { person, files, rides, attached, leftovers, beingRead, copies } = erasureOf(
				ledger,
				input.personId
			);
			if (reason.toLowerCase().includes(person.name.toLowerCase()) && !person.anonymised)
				throw new LedgerRefusal('wrong-value', 'The reason stays for good: write it without the name.');
			const { archives, uploads, named } = leftovers;
			const outside = archives.length + uploads.length + named;
			if (files.length + outside === 0)
				throw new LedgerRefusal('conflict', `There are no files of ${person.code} to erase.`);
			if (beingRead > 0)
				throw new LedgerRefusal(
					'conflict',
					`${beingRead} files of ${person.code} are still coming in or being read; erase them when that is done.`
				);
			for (const sha256 of files) bury(ledger, actor, sha256, reason);
			buryLeftovers(ledger, input.personId, leftovers);
			leaveTrail(ledger, actor, 'erased files of', 'person', input.personId, {
				files: files.length,
				rides,
				attached,
				leftovers: outside,
				...(files.length === 0 ? { reason } : {})
			});
			return { files: files.length, rides, attached, leftovers: outside, copies };
		})
		.immediate();
	faultPoint('erasure-written');
	finishErasures(ledger, true);
	faultPoint('erasure-done');
	return outcome;
}

function bury(ledger: Ledger, actor: Actor, sha256: string, reason: string): void {
	const { database } = ledger;
	database
		.prepare('INSERT INTO erased_source (sha256, erased_ms, erased_by, reason) VALUES (?, ?, ?, ?)')
		.run(sha256, ledger.now(), actor.personId, reason);
	const named = { sha256, name: ERASED_NAME };
	database.prepare('UPDATE source SET file_name = @name WHERE sha256 = @sha256').run(named);
	database.prepare('UPDATE ride SET file_name = @name WHERE sha256 = @sha256').run(named);
	database.prepare('UPDATE attachment SET file_name = @name WHERE sha256 = @sha256').run(named);
	// the technical detail of a refusal may quote the file
	database
		.prepare('UPDATE import SET file_name = @name, folder = NULL, technical = NULL WHERE sha256 = @sha256')
		.run(named);
	// so may the name of the archive that it came in, and of what else was in there and was not taken
	database
		.prepare(
			`UPDATE import SET file_name = @name, folder = NULL, technical = NULL
			WHERE id IN (SELECT archive_id FROM import WHERE sha256 = @sha256)
				OR (sha256 IS NULL AND archive_id IN (SELECT archive_id FROM import WHERE sha256 = @sha256))`
		)
		.run(named);
	database
		.prepare(
			`UPDATE trail SET detail = json_remove(detail, '$.fileName')
			WHERE json_extract(detail, '$.fileName') IS NOT NULL AND (
				(subject = 'source' AND subject_id = @sha256)
				OR (subject = 'ride' AND subject_id IN (SELECT CAST(id AS TEXT) FROM ride WHERE sha256 = @sha256))
				OR (subject = 'import'
					AND subject_id IN (SELECT CAST(id AS TEXT) FROM import WHERE sha256 = @sha256))
				OR json_extract(detail, '$.attachment') IN (SELECT id FROM attachment WHERE sha256 = @sha256))`
		)
		.run({ sha256 });
	leaveTrail(ledger, actor, 'erased', 'source', sha256, { reason });
}
