import { createHash } from 'node:crypto';
import { canonicalJson } from '$lib/release/canonicalJson';
import type { Actor } from '../actor';
import { markReleased } from '../hardware/buildStates';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { LedgerRefusal } from '../refusal';
import { currentCriteria } from './releaseCriteria';

export const DECISIONS = ['released', 'not released', 'continue'] as const;
export type Decision = (typeof DECISIONS)[number];

/** A signed decision; everything it was made on is frozen in its record. */
export interface ReleaseDecision {
	readonly id: number;
	readonly buildId: number;
	readonly criteriaVersion: number;
	readonly decision: Decision;
	readonly reason: string;
	/** code of the owner who signed */
	readonly by: string;
	readonly atMs: number;
	readonly analysisVersion: number;
	readonly recordSha256: string;
	/** whether the stored record still has its hash */
	readonly whole: boolean;
}

export interface DecisionInput {
	readonly buildId: number;
	readonly decision: Decision;
	readonly reason: string;
	/** of the criteria that stood on the page */
	readonly seenCriteriaId: number;
	/** hash of the record that stood on the page: nobody signs what he has not seen */
	readonly seenRecordSha256: string;
}

/** The text that is signed, and its hash. */
export function sealRecord(record: object): { text: string; sha256: string } {
	const text = canonicalJson(record);
	return { text, sha256: createHash('sha256').update(text).digest('hex') };
}

/**
 * Signs a decision about a build: kept with a frozen copy of what it was made on, never changed or removed.
 * "released" also moves the build to that state, and is refused while a criterion does not hold.
 *
 * @param record plain data: criteria, states of the criteria, rides and events used, as now in the ledger
 * @param allHold whether every criterion of the record holds
 * @returns id of the decision
 * @throws LedgerRefusal not-allowed for anybody but an owner, or for a release whose criteria do not hold;
 *   wrong-value for a missing reason; conflict when criteria or evidence are not those that were seen
 */
export function signDecision(
	ledger: Ledger,
	actor: Actor,
	input: DecisionInput,
	record: object,
	allHold: boolean
): number {
	if (actor.role !== 'owner')
		throw new LedgerRefusal(
			'not-allowed',
			'Only an owner signs: a release lies with one who answers for it.'
		);
	if (!DECISIONS.includes(input.decision))
		throw new LedgerRefusal('wrong-value', 'There is no such decision.');
	if (input.decision === 'released' && !allHold)
		throw new LedgerRefusal(
			'not-allowed',
			'Not every criterion holds, so this build cannot be released by them. Sign "not released" or "continue".'
		);
	const reason = checkText('The reason', input.reason, { min: 3, max: 4000 });
	return ledger.database
		.transaction(() => insertDecision(ledger, actor, { ...input, reason }, sealRecord(record)))
		.immediate();
}

function insertDecision(
	ledger: Ledger,
	actor: Actor,
	input: DecisionInput,
	sealed: { text: string; sha256: string }
): number {
	const criteria = currentCriteria(ledger, input.buildId);
	if (criteria?.id !== input.seenCriteriaId || sealed.sha256 !== input.seenRecordSha256)
		throw new LedgerRefusal(
			'conflict',
			'The evidence or the criteria changed since the page was shown. Nothing was signed; look at it again.'
		);
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO release_decision (build_id, criteria_id, decision, reason, actor_id, at_ms,
				analysis_version, record, record_sha256) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`
		)
		.run(
			input.buildId,
			criteria.id,
			input.decision,
			input.reason,
			actor.personId,
			ledger.now(),
			currentVersion(ledger),
			sealed.text,
			sealed.sha256
		);
	const id = Number(lastInsertRowid);
	if (input.decision === 'released') markReleased(ledger, actor, input.buildId, sealed.sha256);
	leaveTrail(ledger, actor, 'signed', 'release decision', id, {
		build: input.buildId,
		decision: input.decision,
		record: sealed.sha256
	});
	return id;
}

type StoredDecision = Omit<ReleaseDecision, 'whole'> & { record: string };

/** Every decision about a build, the newest first; each record is checked against its hash. */
export function listDecisions(ledger: Ledger, buildId: number): ReleaseDecision[] {
	return ledger.database
		.prepare<[number], StoredDecision>(
			`SELECT d.id, d.build_id AS buildId, c.version AS criteriaVersion, d.decision, d.reason, p.code AS by,
				d.at_ms AS atMs, d.analysis_version AS analysisVersion, d.record, d.record_sha256 AS recordSha256
			FROM release_decision d JOIN release_criteria c ON c.id = d.criteria_id
			JOIN person p ON p.id = d.actor_id
			WHERE d.build_id = ? ORDER BY d.at_ms DESC, d.id DESC`
		)
		.all(buildId)
		.map(({ record, ...decision }) => ({
			...decision,
			whole: createHash('sha256').update(record).digest('hex') === decision.recordSha256
		}));
}

/** The frozen record of a decision as it was signed; null when there is no such decision. */
export function decisionRecord(ledger: Ledger, decisionId: number): string | null {
	return (
		ledger.database
			.prepare<[number], { record: string }>('SELECT record FROM release_decision WHERE id = ?')
			.get(decisionId)?.record ?? null
	);
}
