import type { Actor } from '../actor';
import { checkNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { BuildRow } from '../views';
import { refuseTakenName } from './refuseTakenName';

export interface BuildRecord {
	id: number;
	name: string;
	description: string;
	state: BuildRow['state'];
	stepHubDeg: number | null;
	/** 1 for the first of its kind */
	revision: number;
	/** the build that this one is a changed revision of */
	revisionOf: number | null;
	/** the build that this one began as a copy of */
	copiedFrom: number | null;
	/** sent back with a change, so that nobody overwrites another's */
	rowVersion: number;
	example: number;
}

const SELECT = `SELECT id, name, description, state, step_hub_deg AS stepHubDeg, revision,
	revision_of AS revisionOf, copied_from AS copiedFrom, row_version AS rowVersion, example FROM build`;

export function listBuildRecords(ledger: Ledger): BuildRecord[] {
	return ledger.database.prepare<[], BuildRecord>(`${SELECT} ORDER BY id`).all();
}

/** @throws LedgerRefusal not-found */
export function findBuild(ledger: Ledger, buildId: number): BuildRecord {
	const build = ledger.database.prepare<[number], BuildRecord>(`${SELECT} WHERE id = ?`).get(buildId);
	if (!build) throw new LedgerRefusal('not-found', 'There is no such build.');
	return build;
}

export interface BuildInput {
	name: string;
	/** ring, pawls, spring, spacers, axle in the workshop's words */
	description: string;
	/** hub degrees of one step = 360 / points of engagement */
	stepHubDeg?: number | null;
}

/**
 * Name, description and step of a build, cleaned and within reason.
 *
 * @throws LedgerRefusal wrong-value
 */
export function checkBuildInput(input: BuildInput): Required<BuildInput> {
	return {
		name: checkText("The build's name", input.name, { min: 1, max: 120 }),
		description: checkText('The description', input.description, { min: 0, max: 2000 }),
		stepHubDeg: checkNumber('One engagement step', input.stepHubDeg, {
			min: 0.1,
			max: 120,
			unit: 'hub degrees'
		})
	};
}

/**
 * @returns id of the new build, a draft
 * @throws LedgerRefusal wrong-value; conflict when another build has this name
 */
export function createBuild(
	ledger: Ledger,
	actor: Actor,
	input: BuildInput,
	options: { example?: boolean; state?: BuildRow['state'] } = {}
): number {
	const { name, description, stepHubDeg } = checkBuildInput(input);
	return ledger.database
		.transaction((): number => {
			refuseTakenName(ledger, 'build', name);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO build (name, description, state, step_hub_deg, example, created_ms)
					VALUES (?, ?, ?, ?, ?, ?)`
				)
				.run(name, description, options.state ?? 'draft', stepHubDeg, options.example ? 1 : 0, ledger.now());
			leaveTrail(ledger, actor, 'created', 'build', Number(lastInsertRowid), { name });
			return Number(lastInsertRowid);
		})
		.immediate();
}
