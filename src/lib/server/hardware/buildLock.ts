import type { Ledger } from '../ledger/openLedger';
import { findBuild } from './builds';
import { ridesOfBuild } from './ridesOfBuild';

/**
 * Why a build can only be completed and no longer be changed: rides or the release record refer to it.
 *
 * @returns a clause for a sentence; null while nothing refers to it
 */
export function buildLock(ledger: Ledger, buildId: number): string | null {
	if (findBuild(ledger, buildId).state === 'released') return 'it is released';
	const rides = ridesOfBuild(ledger, buildId);
	if (rides === 0) return null;
	return rides === 1 ? 'a ride refers to it' : `${rides} rides refer to it`;
}
