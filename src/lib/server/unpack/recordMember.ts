import { rmSync } from 'node:fs';
import type { MemberFacts, MemberOutcome } from '../../../jobs/unpack/messages';
import type { Actor } from '../actor';
import { inTurn } from '../inTurn';
import type { Ledger } from '../ledger/openLedger';
import { writeUnsynced } from '../ledger/writeUnsynced';
import { holdsLease, type LeaseHolder } from '../queue/lease';
import { recordSource } from '../queue/recordSource';
import { cleanFileName } from '../store/cleanFileName';
import { faultPoint } from '../store/faultPoint';
import { moveToStoreBeside } from '../store/sourceStore';
import type { QueuedArchive } from './archiveQueue';

/**
 * Writes down what became of one file of an archive: its bytes go to the store, synced and named by their hash,
 * then the rows. Asked again for the same file it changes nothing. Pages are answered while it waits for the disk. It
 * does not wait for the rows: those that a power cut takes are made again from the archive, whose bytes stay until
 * the disk has all of them (`finishArchive`).
 *
 * @param isStopped true = the ledger may be closed: nothing more is written
 * @returns false when this runner has lost its lease or somebody else has the archive; nothing was written then
 */
export async function recordMember(
	ledger: Ledger,
	holder: LeaseHolder,
	actor: Actor,
	archive: QueuedArchive,
	facts: MemberFacts,
	outcome: MemberOutcome,
	isStopped: () => boolean = () => false
): Promise<boolean> {
	if (outcome.kind === 'written') {
		faultPoint('member-written');
		await moveToStoreBeside(ledger, outcome.path, outcome.sha256);
		faultPoint('member-moved');
	}
	const written = await inTurn(
		() => !isStopped() && writeUnsynced(ledger, () => addOnce(ledger, holder, actor, archive, facts, outcome))
	);
	if (!written && outcome.kind === 'written') rmSync(outcome.path, { force: true });
	faultPoint('member-recorded');
	return written;
}

function addOnce(
	ledger: Ledger,
	holder: LeaseHolder,
	actor: Actor,
	archive: QueuedArchive,
	facts: MemberFacts,
	outcome: MemberOutcome
): boolean {
	const { database } = ledger;
	return database
		.transaction((): boolean => {
			if (!isOurs(ledger, holder, archive)) return false;
			const known = database
				.prepare('SELECT 1 FROM import WHERE archive_id = ? AND member = ?')
				.get(archive.id, facts.member);
			if (!known) addRow(ledger, actor, archive, facts, outcome);
			// it moves: earlier attempts that broke off no longer count
			database
				.prepare('UPDATE import SET attempts = 1, changed_ms = ? WHERE id = ?')
				.run(ledger.now(), archive.id);
			return true;
		})
		.immediate();
}

function isOurs(ledger: Ledger, holder: LeaseHolder, archive: QueuedArchive): boolean {
	const mine = ledger.database
		.prepare("SELECT 1 FROM import WHERE id = ? AND stage = 'unpacking' AND owner = ?")
		.get(archive.id, archive.owner);
	return mine !== undefined && holdsLease(ledger, 'runner', holder);
}

function addRow(
	ledger: Ledger,
	actor: Actor,
	archive: QueuedArchive,
	facts: MemberFacts,
	outcome: MemberOutcome
): void {
	const now = ledger.now();
	const fileName = cleanFileName(facts.name);
	const place = { archiveId: archive.id, member: facts.member, folder: folderOf(facts.name) };
	if (outcome.kind === 'written') {
		const newImport = { fileName, hints: archive.hints, example: false, atMs: now, place };
		recordSource(ledger, actor, { sha256: outcome.sha256, bytes: outcome.bytes, newImport });
		return;
	}
	const refusal = outcome.kind === 'refused' ? outcome.refusal : null;
	ledger.database
		.prepare(
			`INSERT INTO import (file_name, bytes, stage, code, sentence, technical, hints, actor_id, archive_id,
				member, folder, created_ms, changed_ms) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`
		)
		.run(
			fileName,
			Number.isSafeInteger(facts.bytes) ? facts.bytes : 0,
			outcome.kind,
			refusal?.code ?? null,
			refusal?.sentence ?? (outcome.kind === 'left out' ? outcome.sentence : null),
			refusal?.detail ?? null,
			archive.hints,
			actor.personId,
			archive.id,
			facts.member,
			place.folder,
			now,
			now
		);
}

const MOST_FOLDERS = 4;

/** The last few folders of a name, each cleaned as a file's name is; null = none. */
function folderOf(name: string): string | null {
	const folders = name
		.split('/')
		.slice(0, -1)
		.filter((part) => part !== '' && part !== '.' && part !== '..');
	if (folders.length === 0) return null;
	const shown = folders.slice(-MOST_FOLDERS).map(cleanFileName).join('/');
	return folders.length > MOST_FOLDERS ? `…/${shown}` : shown;
}
