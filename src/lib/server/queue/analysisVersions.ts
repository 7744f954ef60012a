import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { Ledger } from '../ledger/openLedger';
import { readSetting, writeSetting } from '../settings/storedSetting';

/** The analysis version that pages and statistics read; one for the whole ledger. */
export function currentVersion(ledger: Ledger): number {
	const stored = Number(readSetting(ledger, 'analysisVersion'));
	return Number.isSafeInteger(stored) && stored > 0 ? stored : ANALYSIS_VERSION;
}

/**
 * Fixes the version of a new ledger at its first result. A ledger that holds nothing of an older version has
 * nothing to be compared: it takes this program's version without a switch.
 */
export function keepFirstVersion(ledger: Ledger): void {
	const before = currentVersion(ledger);
	const isNew = readSetting(ledger, 'analysisVersion') === null;
	if (!isNew && (before >= ANALYSIS_VERSION || ledger.database.prepare(ANY_OLDER).get(ANALYSIS_VERSION)))
		return;
	writeSetting(ledger, 'analysisVersion', String(ANALYSIS_VERSION));
}

const ANY_OLDER = 'SELECT 1 FROM result WHERE version < ? LIMIT 1';
