import type { BenchEvidence } from '$lib/hardware/refusedState';
import type { Actor } from '../actor';
import { checkNeededNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findBuild } from './builds';
import { refuseFuture } from './periodRows';
import { moveState } from './buildStates';

/** One bench check, or the written reason for doing without it. */
export interface BenchCheckRow {
	id: number;
	kind: 'check' | 'override';
	/** static drive torque that was put on, Nm; null for an override */
	staticTorqueNm: number | null;
	torqueHeld: boolean | null;
	coastsFreely: boolean | null;
	noCreep: boolean | null;
	note: string;
	by: string;
	at: string;
	/** why it no longer holds; null while it does */
	voidReason: string | null;
}

export interface BenchCheckInput {
	/** static drive torque at the freehub body, Nm */
	staticTorqueNm: number | null;
	torqueHeld: boolean;
	coastsFreely: boolean;
	/** the ring did not creep in the shell */
	noCreep: boolean;
	note?: string;
	/** an instant with its zone; now when it is missing */
	at?: string | null;
}

/**
 * Writes down a bench check. Passed means all three: the torque was held, it coasts freely, the ring did not
 * creep. A draft that passed is bench-checked; a build that did not is a draft again, whatever it was.
 *
 * @throws LedgerRefusal not-found; wrong-value
 */
export function recordBenchCheck(
	ledger: Ledger,
	actor: Actor,
	buildId: number,
	input: BenchCheckInput,
	options: { example?: boolean } = {}
): void {
	const staticTorqueNm = checkNeededNumber('The static drive torque', input.staticTorqueNm, {
		min: 1,
		max: 2000,
		unit: 'Nm'
	});
	const note = checkText('The note', input.note, { min: 0, max: 1000 });
	const passed = input.torqueHeld && input.coastsFreely && input.noCreep;
	ledger.database
		.transaction(() => {
			const { state } = findBuild(ledger, buildId);
			const atMs = instantOf(ledger, input.at, options);
			const row = {
				staticTorqueNm,
				torqueHeld: Number(input.torqueHeld),
				coastsFreely: Number(input.coastsFreely),
				noCreep: Number(input.noCreep)
			};
			insert(ledger, actor, buildId, { kind: 'check', ...row, note, atMs });
			leaveTrail(ledger, actor, 'bench-checked', 'build', buildId, {
				passed,
				...row,
				note,
				at: toInstant(atMs)
			});
			const bench = benchEvidence(ledger, buildId);
			if (bench === 'passed' && state === 'draft') moveState(ledger, actor, buildId, 'bench-checked');
			if (bench === 'failed' && (state === 'bench-checked' || state === 'in test'))
				moveState(ledger, actor, buildId, 'draft', 'the bench check was not passed');
		})
		.immediate();
}

/**
 * Writes down why a build is ridden without a bench check that was passed.
 *
 * @throws LedgerRefusal not-found; wrong-value when the reason is shorter than ten characters
 */
export function overrideBenchCheck(
	ledger: Ledger,
	actor: Actor,
	buildId: number,
	reason: string,
	options: { example?: boolean; at?: string } = {}
): void {
	const note = checkText('The reason (at least ten characters)', reason, { min: 10, max: 1000 });
	ledger.database
		.transaction(() => {
			findBuild(ledger, buildId);
			const atMs = instantOf(ledger, options.at, options);
			const none = { staticTorqueNm: null, torqueHeld: null, coastsFreely: null, noCreep: null };
			insert(ledger, actor, buildId, { kind: 'override', ...none, note, atMs });
			leaveTrail(ledger, actor, 'overrode the bench check', 'build', buildId, { reason: note });
		})
		.immediate();
}

function instantOf(
	ledger: Ledger,
	at: string | null | undefined,
	{ example }: { example?: boolean }
): number {
	const atMs = at ? fromInstant(at) : ledger.now();
	if (!example) refuseFuture(ledger, atMs);
	return atMs;
}

function insert(
	ledger: Ledger,
	actor: Actor,
	buildId: number,
	row: Record<string, string | number | null>
): void {
	ledger.database
		.prepare(
			`INSERT INTO bench_check (build_id, kind, static_torque_nm, torque_held, coasts_freely, no_creep, note,
				by, at_ms, created_ms)
			VALUES (@buildId, @kind, @staticTorqueNm, @torqueHeld, @coastsFreely, @noCreep, @note, @by, @atMs, @now)`
		)
		.run({ ...row, buildId, by: actor.personId, now: ledger.now() });
}

/** Bench checks and overrides of a build, the newest first. */
export function listBenchChecks(ledger: Ledger, buildId: number): BenchCheckRow[] {
	type Stored = Omit<BenchCheckRow, 'at' | 'torqueHeld' | 'coastsFreely' | 'noCreep'> & {
		atMs: number;
		torqueHeld: number | null;
		coastsFreely: number | null;
		noCreep: number | null;
	};
	const said = (value: number | null) => (value === null ? null : value === 1);
	return ledger.database
		.prepare<[number], Stored>(
			`SELECT c.id, c.kind, c.static_torque_nm AS staticTorqueNm, c.torque_held AS torqueHeld,
				c.coasts_freely AS coastsFreely, c.no_creep AS noCreep, c.note, p.code AS by, c.at_ms AS atMs,
				c.void_reason AS voidReason
			FROM bench_check c JOIN person p ON p.id = c.by WHERE c.build_id = ? ORDER BY c.at_ms DESC, c.id DESC`
		)
		.all(buildId)
		.map(({ atMs, torqueHeld, coastsFreely, noCreep, ...row }) => ({
			...row,
			at: toInstant(atMs),
			torqueHeld: said(torqueHeld),
			coastsFreely: said(coastsFreely),
			noCreep: said(noCreep)
		}));
}

/** What the newest bench check says that still holds. */
export function benchEvidence(ledger: Ledger, buildId: number): BenchEvidence {
	const newest = listBenchChecks(ledger, buildId).find(({ voidReason }) => voidReason === null);
	if (!newest) return null;
	if (newest.kind === 'override') return 'override';
	return newest.torqueHeld && newest.coastsFreely && newest.noCreep ? 'passed' : 'failed';
}
