import type { Ledger } from '../ledger/openLedger';
import { readSetting } from '../settings/storedSetting';

export const MEGABYTE = 2 ** 20;
const DEFAULT_MEGABYTES = 64;

/** The largest file that is taken, bytes. */
export function uploadLimitBytes(ledger: Ledger): number {
	const stored = Number(readSetting(ledger, 'uploadLimitMegabytes'));
	return (Number.isInteger(stored) && stored > 0 ? stored : DEFAULT_MEGABYTES) * MEGABYTE;
}
