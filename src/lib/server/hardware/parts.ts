import { partMark } from '$lib/hardware/bill';
import { changedFacts, type Fact } from '$lib/hardware/changedFacts';
import type { Actor } from '../actor';
import { factChanges } from '../ledger/factChanges';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { refuseStale } from '../ledger/refuseStale';
import { LedgerRefusal } from '../refusal';
import { buildLock } from './buildLock';
import { findBuild } from './builds';
import { checkPart, type PartFacts, type PartInput } from './checkPart';
import { findPart, partLengths } from './partRecords';

/**
 * @returns id of the new part
 * @throws LedgerRefusal wrong-value; conflict when this number, revision and batch is there already
 */
export function createPart(
	ledger: Ledger,
	actor: Actor,
	input: PartInput,
	options: { example?: boolean } = {}
): number {
	const part = checkPart(input);
	return ledger.database
		.transaction((): number => {
			refuseTakenMark(ledger, part, null);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO part (number, revision, batch, name, kind, material, finish, points_of_engagement,
						note, example, created_ms)
					VALUES (@number, @revision, @batch, @name, @kind, @material, @finish, @pointsOfEngagement,
						@note, @example, @now)`
				)
				.run({ ...withoutLengths(part), example: options.example ? 1 : 0, now: ledger.now() });
			const id = Number(lastInsertRowid);
			writeLengths(ledger, id, part);
			leaveTrail(ledger, actor, 'created', 'part', id, { part: partMark(part) });
			return id;
		})
		.immediate();
}

/**
 * Changes a part. One that is in a build which rides refer to can only be completed: a changed part is
 * another revision or batch.
 *
 * @param rowVersion that stood in the form
 * @throws LedgerRefusal not-found; wrong-value; conflict when somebody else changed it meanwhile, when it
 *   can only be completed, or when another part bears this number, revision and batch
 */
export function changePart(
	ledger: Ledger,
	actor: Actor,
	partId: number,
	rowVersion: number,
	input: PartInput
): void {
	const after = checkPart(input);
	ledger.database
		.transaction(() => {
			const { rowVersion: stored } = findPart(ledger, partId);
			refuseStale(ledger, 'part', partId, stored, rowVersion);
			const before = partFacts(ledger, partId);
			refuseTakenMark(ledger, after, partId);
			refuseChangeOfLocked(ledger, partId, before, after);
			const changes = factChanges(asStored(before), asStored(after));
			if (!changes) return;
			ledger.database
				.prepare(
					`UPDATE part SET number = @number, revision = @revision, batch = @batch, name = @name, kind = @kind,
						material = @material, finish = @finish, points_of_engagement = @pointsOfEngagement, note = @note,
						row_version = row_version + 1 WHERE id = @partId`
				)
				.run({ ...withoutLengths(after), partId });
			writeLengths(ledger, partId, after);
			leaveTrail(ledger, actor, 'changed', 'part', partId, changes);
		})
		.immediate();
}

/** Everything about a part that a change of it can change. */
export function partFacts(ledger: Ledger, partId: number): PartFacts {
	const { id: _id, rowVersion: _rowVersion, example: _example, ...facts } = findPart(ledger, partId);
	return { ...facts, lengths: partLengths(ledger, partId) };
}

/** Why a part can only be completed; null while no build that is locked holds it. */
export function partLock(ledger: Ledger, partId: number): string | null {
	const builds = ledger.database
		.prepare<[number], { id: number }>('SELECT DISTINCT build_id AS id FROM build_part WHERE part_id = ?')
		.all(partId);
	for (const { id } of builds) {
		const lock = buildLock(ledger, id);
		if (lock)
			return `it is in the build "${findBuild(ledger, id).name}", and ${lock.replace(/\bit\b/, 'that build')}`;
	}
	return null;
}

function refuseChangeOfLocked(ledger: Ledger, partId: number, before: PartFacts, after: PartFacts): void {
	const [changed] = changedFacts(before as unknown as Fact, after as unknown as Fact);
	const lock = changed === undefined ? null : partLock(ledger, partId);
	if (!lock) return;
	throw new LedgerRefusal(
		'conflict',
		`This part cannot be changed any more (${WORDS[changed.split(' ')[0]] ?? changed.split(' ')[0]}), because ${lock}; what was left empty can still be filled in. Write down a new revision or batch instead.`
	);
}

function refuseTakenMark(ledger: Ledger, part: PartFacts, exceptId: number | null): void {
	const { number, revision, batch } = part;
	const taken = ledger.database
		.prepare('SELECT 1 FROM part WHERE number = ? AND revision = ? AND batch = ? AND id IS NOT ?')
		.get(number, revision, batch, exceptId);
	if (taken) throw new LedgerRefusal('conflict', `There is a part ${partMark(part)} already.`);
}

function withoutLengths(part: PartFacts) {
	const { lengths: _lengths, ...rest } = part;
	return rest;
}

const WORDS: Readonly<Record<string, string>> = { pointsOfEngagement: 'points of engagement' };

/** Lengths compare in words: the trail then shows them whole. */
function asStored(part: PartFacts): object {
	const words = part.lengths.map(
		({ what, nominalMm, minusMm, plusMm }) => `${what} ${nominalMm} mm (-${minusMm} +${plusMm})`
	);
	return { ...part, lengths: words.join('; ') };
}

function writeLengths(ledger: Ledger, partId: number, { lengths }: PartFacts): void {
	ledger.database.prepare('DELETE FROM part_length WHERE part_id = ?').run(partId);
	const add = ledger.database.prepare(
		`INSERT INTO part_length (part_id, what, nominal_mm, minus_mm, plus_mm)
		VALUES (@partId, @what, @nominalMm, @minusMm, @plusMm)`
	);
	for (const length of lengths) add.run({ ...length, partId });
}
