import { changedFacts } from '$lib/hardware/changedFacts';
import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { buildLock } from './buildLock';
import { findBuild } from './builds';
import { checkStack, type CheckedStack, type StackInput } from './stackInput';
import {
	findStack,
	stacksOfBuild,
	writeElements,
	type StackElementRecord,
	type StackRecord
} from './stackRows';
import { voidBenchChecks } from './voidBenchChecks';

/**
 * Writes down what a build comes to on one more freehub variant.
 *
 * @returns id of the stack
 * @throws LedgerRefusal not-found; wrong-value; conflict when the variant is there already
 */
export function addStack(ledger: Ledger, actor: Actor, buildId: number, input: StackInput): number {
	return ledger.database
		.transaction((): number => {
			findBuild(ledger, buildId);
			const stack = checkStack(ledger, input);
			refuseTakenVariant(ledger, buildId, stack.variant, null);
			refuseWrongDish(ledger, buildId, stack, null);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO hub_stack (build_id, variant, over_locknut_mm, dished_on_id, rim_offset_mm, note, created_ms)
					VALUES (@buildId, @variant, @overLocknutMm, @dishedOnId, @rimOffsetMm, @note, @now)`
				)
				.run({ ...columns(stack), buildId, now: ledger.now() });
			const stackId = Number(lastInsertRowid);
			writeElements(ledger, stackId, stack.elements);
			leaveTrail(ledger, actor, 'created', 'hub stack', stackId, { buildId, after: stack });
			return stackId;
		})
		.immediate();
}

/**
 * Changes a stack. Of a build that rides refer to it is only completed: what was left empty may be written
 * in, anything else needs a new revision of the build. Changed elements are another hub: bench checks of the
 * build say nothing any more.
 *
 * @param seenVersion row version that the form was filled from
 * @throws LedgerRefusal not-found; wrong-value; conflict when another person changed it meanwhile, or when
 *   rides refer to the build
 */
export function changeStack(
	ledger: Ledger,
	actor: Actor,
	stackId: number,
	input: StackInput,
	seenVersion: number
): void {
	ledger.database
		.transaction(() => {
			const before = findStack(ledger, stackId);
			const stack = checkStack(ledger, input);
			if (before.rowVersion !== seenVersion) throw changedMeanwhile(ledger, before);
			refuseTakenVariant(ledger, before.buildId, stack.variant, stackId);
			refuseWrongDish(ledger, before.buildId, stack, stackId);
			refuseLockedChange(ledger, before, stack);
			ledger.database
				.prepare(
					`UPDATE hub_stack SET variant = @variant, over_locknut_mm = @overLocknutMm,
						dished_on_id = @dishedOnId, rim_offset_mm = @rimOffsetMm, note = @note,
						row_version = row_version + 1 WHERE id = @stackId`
				)
				.run({ ...columns(stack), stackId });
			writeElements(ledger, stackId, stack.elements);
			if (changedFacts(elementFacts(before), elementFacts(stack)).length > 0)
				voidBenchChecks(ledger, actor, before.buildId, 'the axial stack was changed');
			leaveTrail(ledger, actor, 'changed', 'hub stack', stackId, { before: contents(before), after: stack });
		})
		.immediate();
}

/** Takes a stack out of use, with the reason; it stays in the ledger. @throws LedgerRefusal */
export function withdrawStack(ledger: Ledger, actor: Actor, stackId: number, reason: string): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 500 });
	ledger.database
		.transaction(() => {
			const before = findStack(ledger, stackId);
			ledger.database
				.prepare('UPDATE hub_stack SET withdrawn_ms = ?, withdrawn_reason = ? WHERE id = ?')
				.run(ledger.now(), cleaned, stackId);
			const dishedOnIt = ledger.database
				.prepare<[number], { id: number }>(
					'UPDATE hub_stack SET dished_on_id = NULL WHERE dished_on_id = ? RETURNING id'
				)
				.all(stackId)
				.map(({ id }) => id);
			leaveTrail(ledger, actor, 'withdrew', 'hub stack', stackId, {
				reason: cleaned,
				before: contents(before),
				// putting it back gives them their base again
				...(dishedOnIt.length > 0 && { dishedOnIt })
			});
		})
		.immediate();
}

/** Gives a new build (a revision or a copy) the stacks of its predecessor. In the caller's transaction. */
export function copyStacks(ledger: Ledger, actor: Actor, fromBuildId: number, toBuildId: number): void {
	const copies = new Map<number, number>();
	const stacks = stacksOfBuild(ledger, fromBuildId);
	for (const { id, variant, overLocknutMm, note, elements } of stacks) {
		// lengths were measured on the other hub
		const unmeasured = elements.map((element) => ({ ...element, measuredMm: null }));
		const copy = { variant, overLocknutMm, note, elements: unmeasured };
		copies.set(id, addStack(ledger, actor, toBuildId, copy));
	}
	const dished = ledger.database.prepare('UPDATE hub_stack SET dished_on_id = ? WHERE id = ?');
	for (const { id, dishedOnId } of stacks)
		if (dishedOnId !== null) dished.run(copies.get(dishedOnId), copies.get(id));
}

function columns({ variant, overLocknutMm, dishedOnId, rimOffsetMm, note }: CheckedStack) {
	return { variant, overLocknutMm, dishedOnId, rimOffsetMm, note };
}

function contents(record: StackRecord): CheckedStack {
	return { ...columns(record), elements: record.elements };
}

export function refuseTakenVariant(
	ledger: Ledger,
	buildId: number,
	variant: string,
	exceptId: number | null
): void {
	const taken = stacksOfBuild(ledger, buildId).find(
		(stack) => stack.id !== exceptId && stack.variant.toLowerCase() === variant.toLowerCase()
	);
	if (taken)
		throw new LedgerRefusal(
			'conflict',
			`This build has a stack on "${taken.variant}" already; change that one.`
		);
}

function refuseWrongDish(ledger: Ledger, buildId: number, stack: CheckedStack, ownId: number | null): void {
	if (stack.dishedOnId === null) return;
	if (stack.dishedOnId === ownId || findStack(ledger, stack.dishedOnId).buildId !== buildId)
		throw new LedgerRefusal('wrong-value', 'The wheel was dished on another stack of the same build.');
}

function refuseLockedChange(ledger: Ledger, before: StackRecord, after: CheckedStack): void {
	const lock = buildLock(ledger, before.buildId);
	if (lock === null) return;
	const changed = changedFacts(asFacts(contents(before)), asFacts(after));
	if (changed.length === 0) return;
	throw new LedgerRefusal(
		'conflict',
		`What this stack says of the build stays as it is, because ${lock}: make a new revision of the build. What was left empty may be written in.`
	);
}

function asFacts(stack: CheckedStack) {
	return { ...columns(stack), elements: elementFacts(stack) };
}

function elementFacts(stack: { elements: readonly StackElementRecord[] }) {
	return stack.elements.map((element) => ({ ...element }));
}

function changedMeanwhile(ledger: Ledger, before: StackRecord): LedgerRefusal {
	const last = ledger.database
		.prepare<[string], { name: string }>(
			`SELECT p.name FROM trail t JOIN person p ON p.id = t.actor_id
			WHERE t.subject = 'hub stack' AND t.subject_id = ? ORDER BY t.id DESC LIMIT 1`
		)
		.get(String(before.id));
	return new LedgerRefusal(
		'conflict',
		`${last?.name ?? 'Someone'} changed this stack while you were at it; nothing was overwritten. Open it again and enter your change there.`
	);
}
