import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ReleaseCriteria } from '$lib/release/criteria';
import type { Actor } from '../actor';
import { fromInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { setReleaseCriteria } from '../release/releaseCriteria';
import { LedgerRefusal } from '../refusal';

type PlannedCriteria = ReleaseCriteria & {
	readonly build: string;
	readonly replaces: string;
	readonly setAt: string;
	readonly reason: string;
};

/** What the example workshop asked of its builds, set at instants before their tests, as it would have been. An example without the file has none. */
export function installRelease(
	ledger: Ledger,
	actor: Actor,
	folder: string,
	builds: ReadonlyMap<string, number>
): void {
	const file = join(folder, 'workshop', 'release.json');
	if (!existsSync(file)) return;
	const { criteria: all } = JSON.parse(readFileSync(file, 'utf8')) as { criteria: PlannedCriteria[] };
	for (const { build, replaces, setAt, reason, ...criteria } of all) {
		const buildId = builds.get(build);
		if (buildId === undefined)
			throw new LedgerRefusal(
				'wrong-value',
				'The example asks something of a build that it does not describe.'
			);
		setReleaseCriteria(
			ledger,
			actor,
			{ buildId, referenceBuildId: builds.get(replaces) ?? null, criteria, reason, seenVersion: null },
			{ setMs: fromInstant(setAt) }
		);
	}
}

/** A workshop's own criteria stay, without the invented build that they were set against. */
export const REMOVE_RELEASE = [
	...['release_decision', 'release_criteria'].map(
		(table) => `DELETE FROM ${table} WHERE build_id IN (SELECT id FROM build WHERE example = 1)`
	),
	`UPDATE release_criteria SET reference_build_id = NULL
		WHERE reference_build_id IN (SELECT id FROM build WHERE example = 1)`
];
