import { canonicalJson } from '$lib/release/canonicalJson';
import type { ReleaseCriteria } from '$lib/release/criteria';
import { criteriaProblems } from '$lib/release/criteriaProblems';
import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** One version of what a build has to show. */
export interface CriteriaVersion {
	readonly id: number;
	readonly buildId: number;
	/** 1, 2, 3 ... of this build */
	readonly version: number;
	readonly referenceBuildId: number | null;
	readonly criteria: ReleaseCriteria;
	readonly reason: string;
	/** code of the person */
	readonly setBy: string;
	/** only rides that begin at this instant or later count */
	readonly setMs: number;
}

export interface CriteriaInput {
	readonly buildId: number;
	/** the build that it replaces; null = none */
	readonly referenceBuildId: number | null;
	readonly criteria: ReleaseCriteria;
	/** why these, and from the second version on: why they were changed */
	readonly reason: string;
	/** number of the version that stood on the page; null = none: nobody replaces a version unseen */
	readonly seenVersion: number | null;
}

/**
 * Sets what a build has to show. The first version has to be there before its test; a later one begins
 * the test anew: only rides from now on count for it.
 *
 * @param options `setMs`: only for the example, whose programme lies in the past; now when it is not given
 * @returns id of the new version
 * @throws LedgerRefusal wrong-value for criteria that no test could meet or for a missing reason;
 *   not-found; conflict when another version was set meanwhile; not-allowed once the build is released or
 *   withdrawn
 */
export function setReleaseCriteria(
	ledger: Ledger,
	actor: Actor,
	input: CriteriaInput,
	{ setMs = ledger.now() }: { setMs?: number } = {}
): number {
	const [problem] = criteriaProblems(input.criteria);
	if (problem) throw new LedgerRefusal('wrong-value', problem);
	const reason = checkText('The reason', input.reason, { min: 3, max: 2000 });
	return ledger.database
		.transaction(() => insertVersion(ledger, actor, { ...input, reason }, setMs))
		.immediate();
}

function insertVersion(ledger: Ledger, actor: Actor, input: CriteriaInput, setMs: number): number {
	const state = stateOfBuild(ledger, input.buildId);
	if (state === 'released' || state === 'withdrawn')
		throw new LedgerRefusal(
			'not-allowed',
			`This build is ${state}; what it had to show is no longer changed. Copy it to make the next build.`
		);
	if (input.referenceBuildId !== null) {
		stateOfBuild(ledger, input.referenceBuildId);
		if (input.referenceBuildId === input.buildId)
			throw new LedgerRefusal('wrong-value', 'A build cannot be set against itself.');
	}
	const standing = currentCriteria(ledger, input.buildId);
	if ((standing?.version ?? null) !== input.seenVersion)
		throw new LedgerRefusal(
			'conflict',
			`Meanwhile ${standing ? `${standing.setBy} set version ${standing.version}` : 'the criteria changed'}. Nothing was changed; look at the page again.`
		);
	const version = (standing?.version ?? 0) + 1;
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO release_criteria (build_id, version, reference_build_id, criteria, reason, set_by, set_ms)
			VALUES (?, ?, ?, ?, ?, ?, ?)`
		)
		.run(
			input.buildId,
			version,
			input.referenceBuildId,
			canonicalJson(input.criteria),
			input.reason,
			actor.personId,
			setMs
		);
	leaveTrail(ledger, actor, 'set', 'release criteria', Number(lastInsertRowid), {
		build: input.buildId,
		version,
		reason: input.reason
	});
	return Number(lastInsertRowid);
}

function stateOfBuild(ledger: Ledger, buildId: number): string {
	const row = ledger.database
		.prepare<[number], { state: string }>('SELECT state FROM build WHERE id = ?')
		.get(buildId);
	if (!row) throw new LedgerRefusal('not-found', 'There is no such build.');
	return row.state;
}

type StoredVersion = Omit<CriteriaVersion, 'criteria'> & { criteria: string };

/** Every version that a build ever had, the newest first: how many plans were tried is part of the answer. */
export function listCriteria(ledger: Ledger, buildId: number): CriteriaVersion[] {
	return ledger.database
		.prepare<[number], StoredVersion>(
			`SELECT c.id, c.build_id AS buildId, c.version, c.reference_build_id AS referenceBuildId, c.criteria,
				c.reason, p.code AS setBy, c.set_ms AS setMs
			FROM release_criteria c JOIN person p ON p.id = c.set_by
			WHERE c.build_id = ? ORDER BY c.version DESC`
		)
		.all(buildId)
		.map((row) => ({ ...row, criteria: JSON.parse(row.criteria) as ReleaseCriteria }));
}

/** The version that stands; null before the first. */
export function currentCriteria(ledger: Ledger, buildId: number): CriteriaVersion | null {
	return listCriteria(ledger, buildId)[0] ?? null;
}
