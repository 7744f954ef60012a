import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { tablesOfResults } from '../queue/clearResult';
import { keepOnlyChannels } from '../queue/saveChannels';
import { LedgerRefusal } from '../refusal';
import { setVersion } from './setVersion';
import { versionState } from './versionState';

/**
 * Makes another version of the analysis the current one for the whole ledger, in one transaction: forward to
 * this program's version when every ride has it, or back to an older one whose results are still kept. Verdicts
 * go to the events of that version; those that judge nothing there stay and are named in the trail.
 *
 * @param seen the version that was current on the page
 * @throws LedgerRefusal conflict when another one is current by now or rides are still to be computed;
 *   not-found when no results of that version are kept
 */
export function makeVersionCurrent(ledger: Ledger, actor: Actor, version: number, seen: number): void {
	const before = ledger.database
		.transaction((): number => {
			const current = currentVersion(ledger);
			if (current !== seen)
				throw new LedgerRefusal(
					'conflict',
					`Version ${current} is current meanwhile; look at the page again.`
				);
			if (version === current) throw new LedgerRefusal('conflict', `Version ${version} is current already.`);
			const { kept, missing } = versionState(ledger);
			if (!kept.some((one) => one.version === version))
				throw new LedgerRefusal('not-found', `No results of version ${version} are kept.`);
			if (version === ANALYSIS_VERSION && missing > 0)
				throw new LedgerRefusal(
					'conflict',
					`${missing} rides are still to be computed by version ${version}.`
				);
			const verdictsWithoutEvent = setVersion(ledger, version);
			leaveTrail(ledger, actor, 'changed over', 'analysis version', version, {
				before: current,
				verdictsWithoutEvent
			});
			return current;
		})
		.immediate();
	// traces of the version before stay as long as one can go back to it
	keepOnlyChannels(ledger, [version, before, ANALYSIS_VERSION]);
}

/**
 * Removes all results and traces of an older version, after which nobody can go back to it.
 *
 * @throws LedgerRefusal conflict for the current version and for this program's own
 */
export function removeVersion(ledger: Ledger, actor: Actor, version: number): void {
	const { database } = ledger;
	database
		.transaction(() => {
			if (version === currentVersion(ledger) || version >= ANALYSIS_VERSION)
				throw new LedgerRefusal(
					'conflict',
					'Only results of an older version that is not current can be removed.'
				);
			const { kept } = versionState(ledger);
			const found = kept.find((one) => one.version === version);
			if (!found) throw new LedgerRefusal('not-found', `No results of version ${version} are kept.`);
			for (const table of [...tablesOfResults(ledger), 'result', 'derivation'])
				database.prepare(`DELETE FROM ${table} WHERE version = ?`).run(version);
			leaveTrail(ledger, actor, 'removed', 'analysis version', version, { rides: found.rides });
		})
		.immediate();
	ledger.channels.prepare('DELETE FROM channel WHERE version = ?').run(version);
}
