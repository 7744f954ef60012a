import type { Ledger } from '../ledger/openLedger';
import { readSetting } from '../settings/storedSetting';

const DEFAULT_LIMIT_BYTES = 64 * 2 ** 20;

/** The largest file that is taken, bytes. */
export function uploadLimitBytes(ledger: Ledger): number {
	const stored = Number(readSetting(ledger, 'uploadLimitBytes'));
	return Number.isSafeInteger(stored) && stored > 0 ? stored : DEFAULT_LIMIT_BYTES;
}
