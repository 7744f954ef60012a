import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { listPeople, actorOf } from '../people/people';
import { attachVerdicts } from '../review/attachVerdicts';
import { readSetting, writeSetting } from '../settings/storedSetting';
import { MOST_ATTEMPTS } from './importQueue';
import { removeOldChannels } from './saveChannels';

/** The analysis version that pages and statistics read; one for the whole ledger. */
export function currentVersion(ledger: Ledger): number {
	const stored = Number(readSetting(ledger, 'analysisVersion'));
	return Number.isSafeInteger(stored) && stored > 0 ? stored : ANALYSIS_VERSION;
}

/** Fixes the version of a new ledger at its first result. */
export function keepFirstVersion(ledger: Ledger): void {
	if (readSetting(ledger, 'analysisVersion') === null)
		writeSetting(ledger, 'analysisVersion', String(ANALYSIS_VERSION));
}

/**
 * Makes this program's version the current one when every ride has its result (or has failed to get one)
 * and it is newer. All rides change over in one transaction; no statistic ever mixes versions. What
 * happened to verdicts is kept in the trail.
 *
 * @returns true when the ledger changed over
 */
export function switchVersionWhenComplete(ledger: Ledger): boolean {
	const before = currentVersion(ledger);
	if (before >= ANALYSIS_VERSION || countMissing(ledger) > 0) return false;
	const changed = ledger.database
		.transaction((): boolean => {
			if (currentVersion(ledger) !== before || countMissing(ledger) > 0) return false;
			const judged = ledger.database
				.prepare<[], { rideId: number }>(
					'SELECT DISTINCT ride_id AS rideId FROM verdict WHERE superseded_ms IS NULL'
				)
				.all();
			for (const { rideId } of judged) attachVerdicts(ledger, rideId, ANALYSIS_VERSION);
			writeSetting(ledger, 'analysisVersion', String(ANALYSIS_VERSION));
			const owner = listPeople(ledger).find((person) => person.role === 'owner');
			if (owner)
				leaveTrail(ledger, actorOf(owner), 'changed over', 'analysis version', ANALYSIS_VERSION, {
					before,
					verdictsWithoutEvent: verdictsWithoutEvent(ledger)
				});
			return true;
		})
		.immediate();
	if (changed) removeOldChannels(ledger, ANALYSIS_VERSION);
	return changed;
}

function countMissing(ledger: Ledger): number {
	return ledger.database
		.prepare<[number, number, number], { n: number }>(
			`SELECT count(*) AS n FROM ride r
			WHERE NOT EXISTS (SELECT 1 FROM result WHERE ride_id = r.id AND version = ?)
			AND NOT EXISTS (SELECT 1 FROM derivation WHERE ride_id = r.id AND version = ?
				AND (failure IS NOT NULL OR attempts >= ?))`
		)
		.get(ANALYSIS_VERSION, ANALYSIS_VERSION, MOST_ATTEMPTS)!.n;
}

/** Verdicts that stand but judge nothing which the current version still reports. */
function verdictsWithoutEvent(ledger: Ledger): number[] {
	return ledger.database
		.prepare<[number], { id: number }>(
			`SELECT v.id FROM verdict v WHERE v.superseded_ms IS NULL AND NOT EXISTS
				(SELECT 1 FROM slip_event e WHERE e.verdict_id = v.id AND e.version = ?)`
		)
		.all(ANALYSIS_VERSION)
		.map(({ id }) => id);
}
