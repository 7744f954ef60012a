import { existsSync } from 'node:fs';
import type { FileRefusal } from '../../../jobs/analysis/messages';
import type { MemberFacts, MemberOutcome } from '../../../jobs/unpack/messages';
import type { Ledger } from '../ledger/openLedger';
import { log } from '../log/log';
import { findPersonAsActor } from '../people/people';
import type { LeaseHolder } from '../queue/lease';
import { archivePath, memberPlace } from '../store/archivePlace';
import { unpackLimits } from '../store/uploadLimit';
import {
	finishArchive,
	recordedMembers,
	releaseArchive,
	takeNextArchive,
	type QueuedArchive
} from './archiveQueue';
import { recordMember } from './recordMember';
import {
	UNPACK_CHILD_LIMITS,
	unpackInChild,
	type UnpackChildLimits,
	type UnpackEnd,
	type Unpacking
} from './unpackChild';

/** a file of an archive that ended its process so often is refused */
const MOST_CRASHES = 3;

/**
 * Unpacks archives that wait, one at a time, beside the analysis: for whoever holds the runner lease. Each file is
 * written down before the next one is begun, so that a stop at any moment goes on behind the last one.
 */
export class ArchiveUnpacker {
	#work: Promise<void> | null = null;
	#unpacking: Unpacking | null = null;
	#archive: QueuedArchive | null = null;
	#stopped = false;
	/** how often a file ended its process, by archive and place */
	readonly #crashes = new Map<string, number>();

	constructor(
		private readonly ledger: Ledger,
		private readonly holder: LeaseHolder,
		/** entry file of the child process */
		private readonly entry: () => string,
		/** told after each file, so that it can be read at once */
		private readonly onRecorded: () => void,
		private readonly limits: UnpackChildLimits = UNPACK_CHILD_LIMITS
	) {}

	/** Begins with the next archive unless one is under way. */
	look(): void {
		if (this.#work || this.#stopped) return;
		const archive = takeNextArchive(this.ledger, this.holder);
		if (!archive) return;
		this.#archive = archive;
		this.#work = this.#unpack(archive)
			.catch((error) => log.failure('archive not unpacked', error))
			.finally(() => {
				this.#work = this.#unpacking = this.#archive = null;
				if (!this.#stopped) this.onRecorded();
			});
	}

	/** Hands the archive back and ends the child; resolves when nothing is under way. */
	stop(): Promise<void> {
		const taken = this.#stopped ? null : this.#archive;
		this.#stopped = true;
		this.#unpacking?.stop();
		if (taken) releaseArchive(this.ledger, taken);
		return this.#work ?? Promise.resolve();
	}

	async #unpack(archive: QueuedArchive): Promise<void> {
		const actor = findPersonAsActor(this.ledger, archive.actorId);
		const path = archivePath(this.ledger.folder, archive.sha256);
		const isStopped = () => this.#stopped;
		const finish = (refusal: FileRefusal | null) => finishArchive(this.ledger, archive, refusal, isStopped);
		if (!actor || !existsSync(path)) return finish(GONE);
		log.info('archive taken up', { import: archive.id, attempt: archive.attempts });
		const record = async (facts: MemberFacts, outcome: MemberOutcome) => {
			if (this.#stopped) return false;
			const written = await recordMember(this.ledger, this.holder, actor, archive, facts, outcome, isStopped);
			if (written) this.onRecorded();
			return written;
		};
		for (;;) {
			this.#unpacking = unpackInChild(
				this.entry(),
				{
					kind: 'unpack',
					path,
					into: memberPlace(this.ledger, archive.id),
					limits: unpackLimits(this.ledger),
					recorded: recordedMembers(this.ledger, archive.id)
				},
				this.limits,
				record
			);
			const end = await this.#unpacking.end;
			if (this.#stopped) return;
			log.info('archive left', { import: archive.id, outcome: end.kind });
			if (end.kind === 'end') return finish(null);
			if (end.kind === 'refused') return finish(end.refusal);
			if (end.kind === 'stopped' && !end.at) return finish(end.refusal);
			// a fault outside any file counts as an attempt and is tried again with the next look
			if (!end.at || isFullDisk(end)) return;
			if (end.kind === 'broke' && !this.#brokeTooOften(archive, end.at)) return;
			const refusal = end.kind === 'stopped' ? end.refusal : { ...CRASHED, detail: end.detail };
			if (!(await record(end.at, { kind: 'refused', refusal }))) return;
		}
	}

	#brokeTooOften({ id }: QueuedArchive, { member }: MemberFacts): boolean {
		const key = `${id} ${member}`;
		const crashes = (this.#crashes.get(key) ?? 0) + 1;
		this.#crashes.set(key, crashes);
		return crashes >= MOST_CRASHES;
	}
}

/** no fault of the file: the archive waits, or is given up and can be tried again */
function isFullDisk(end: UnpackEnd): boolean {
	return end.kind === 'broke' && /ENOSPC|EDQUOT/.test(end.detail);
}

const GONE = {
	code: 'archive-gone',
	sentence:
		'This archive was not unpacked to its end, and its bytes are not here any more. Hand it in again: what is in the ledger already counts once.',
	detail: 'no file in archives/'
};

const CRASHED = {
	code: 'gave-up',
	sentence: `Unpacking this file broke off ${MOST_CRASHES} times. Hand in the file itself.`
};
