import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { buildContents, type BuildContents } from './buildContents';
import { findBuild, listBuildRecords } from './builds';
import { refuseTakenName } from './refuseTakenName';
import { copyStacks } from './stackSave';
import { writeBuildContents } from './writeBuildContents';

/**
 * A new revision of a build: the same bill and wanted torques, to be changed. The old one stays as it was.
 *
 * @returns id of the new revision, a draft
 * @throws LedgerRefusal not-found
 */
export function makeRevision(ledger: Ledger, actor: Actor, buildId: number): number {
	return ledger.database
		.transaction((): number => {
			const builds = listBuildRecords(ledger);
			const before = findBuild(ledger, buildId);
			const first = firstOf(buildId, new Map(builds.map((build) => [build.id, build.revisionOf])));
			const family = builds.filter(
				({ id }) => firstOf(id, new Map(builds.map((build) => [build.id, build.revisionOf]))) === first
			);
			let revision = Math.max(...family.map((build) => build.revision)) + 1;
			const stem = before.name.replace(/, revision \d+$/, '').slice(0, 100);
			const taken = new Set(builds.map(({ name }) => name.toLowerCase()));
			while (taken.has(`${stem}, revision ${revision}`.toLowerCase())) revision++;
			return copy(ledger, actor, buildId, {
				name: `${stem}, revision ${revision}`,
				revision,
				revisionOf: buildId,
				copiedFrom: null
			});
		})
		.immediate();
}

/**
 * Another build that begins as a copy of this one.
 *
 * @returns id of the new build, a draft
 * @throws LedgerRefusal not-found; wrong-value; conflict when another build has this name
 */
export function copyBuild(ledger: Ledger, actor: Actor, buildId: number, name: string): number {
	const cleaned = checkText("The new build's name", name, { min: 1, max: 120 });
	return ledger.database
		.transaction((): number => {
			refuseTakenName(ledger, 'build', cleaned);
			return copy(ledger, actor, buildId, {
				name: cleaned,
				revision: 1,
				revisionOf: null,
				copiedFrom: buildId
			});
		})
		.immediate();
}

function firstOf(buildId: number, revisionOf: ReadonlyMap<number, number | null>): number {
	let first = buildId;
	for (let before = revisionOf.get(first); before != null; before = revisionOf.get(first)) first = before;
	return first;
}

interface NewBuild {
	name: string;
	revision: number;
	revisionOf: number | null;
	copiedFrom: number | null;
}

function copy(ledger: Ledger, actor: Actor, fromId: number, wanted: NewBuild): number {
	const { example } = findBuild(ledger, fromId);
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO build (name, description, revision, revision_of, copied_from, example, created_ms)
			VALUES (@name, '', @revision, @revisionOf, @copiedFrom, @example, @now)`
		)
		.run({ ...wanted, example, now: ledger.now() });
	const id = Number(lastInsertRowid);
	const contents = withoutMeasurements(buildContents(ledger, fromId)!);
	writeBuildContents(ledger, id, { ...contents, name: wanted.name });
	copyStacks(ledger, actor, fromId, id);
	leaveTrail(ledger, actor, 'created', 'build', id, {
		name: wanted.name,
		...(wanted.revisionOf === null ? { copiedFrom: fromId } : { revisionOf: fromId })
	});
	return id;
}

/** What was measured or done on the old one has to be done again on the new one. */
function withoutMeasurements(contents: BuildContents): BuildContents {
	return {
		...contents,
		builtBy: null,
		builtMs: null,
		preload: '',
		endFloatMm: null,
		notes: '',
		torques: contents.torques.map((line) => ({ ...line, recordedNm: null, personId: null, atMs: null }))
	};
}
