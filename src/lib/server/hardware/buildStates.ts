import { refusedState } from '$lib/hardware/refusedState';
import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { BuildRow } from '../views';
import { benchEvidence } from './benchChecks';
import { findBuild } from './builds';

/**
 * Lets riders test a build.
 *
 * @param told whether whoever rides it was told what a slip that is felt means
 * @throws LedgerRefusal not-found; wrong-value unless they were told; conflict without a passed bench check
 *   or an override
 */
export function putInTest(ledger: Ledger, actor: Actor, buildId: number, told: boolean): void {
	if (!told)
		throw new LedgerRefusal(
			'wrong-value',
			'Whoever rides it has to know first that a slip that is felt ends the test: tell them, then tick it.'
		);
	change(ledger, actor, buildId, 'in test');
}

/**
 * Takes a build out of use for good, with the reason. It and its rides stay.
 *
 * @throws LedgerRefusal not-found; wrong-value without a reason; conflict when it is withdrawn already
 */
export function withdrawBuild(ledger: Ledger, actor: Actor, buildId: number, reason: string): void {
	change(ledger, actor, buildId, 'withdrawn', checkText('The reason', reason, { min: 3, max: 500 }));
}

/**
 * A build that was withdrawn is a draft again; it is checked anew before anybody rides it.
 *
 * @throws LedgerRefusal not-found; wrong-value without a reason; conflict when it is not withdrawn
 */
export function takeBuildBackIn(ledger: Ledger, actor: Actor, buildId: number, reason: string): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 500 });
	ledger.database
		.transaction(() => {
			if (findBuild(ledger, buildId).state !== 'withdrawn')
				throw new LedgerRefusal('conflict', 'This build is not withdrawn.');
			ledger.database
				.prepare('UPDATE bench_check SET void_ms = ?, void_reason = ? WHERE build_id = ? AND void_ms IS NULL')
				.run(ledger.now(), 'the build was withdrawn', buildId);
			moveState(ledger, actor, buildId, 'draft', cleaned);
		})
		.immediate();
}

/**
 * For the signed release record alone, within its transaction.
 *
 * @throws LedgerRefusal conflict when the build is not in test
 */
export function markReleased(ledger: Ledger, actor: Actor, buildId: number, record: string): void {
	refuse(ledger, buildId, 'released', true);
	moveState(ledger, actor, buildId, 'released', record);
}

function change(ledger: Ledger, actor: Actor, buildId: number, to: BuildRow['state'], reason?: string): void {
	ledger.database
		.transaction(() => {
			refuse(ledger, buildId, to, false);
			moveState(ledger, actor, buildId, to, reason);
		})
		.immediate();
}

function refuse(ledger: Ledger, buildId: number, to: BuildRow['state'], byReleaseRecord: boolean): void {
	const { state } = findBuild(ledger, buildId);
	const refused = refusedState(state, to, benchEvidence(ledger, buildId), byReleaseRecord);
	if (refused) throw new LedgerRefusal('conflict', refused);
}

/** Writes another state down, with its trail. Belongs in the caller's transaction, after its checks. */
export function moveState(
	ledger: Ledger,
	actor: Actor,
	buildId: number,
	to: BuildRow['state'],
	reason?: string
): void {
	const { state } = findBuild(ledger, buildId);
	ledger.database.prepare('UPDATE build SET state = ? WHERE id = ?').run(to, buildId);
	leaveTrail(ledger, actor, 'changed state', 'build', buildId, {
		before: state,
		after: to,
		...(reason === undefined ? {} : { reason })
	});
}
