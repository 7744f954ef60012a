import type { TestEvidence } from '$lib/release/criteria';
import { billView } from '../hardware/billViews';
import { buildLock } from '../hardware/buildLock';
import type { Ledger } from '../ledger/openLedger';

/**
 * Whether what was tested is what will be made: a build that can no longer be changed, of parts as produced
 * with their batches. Of a part of which nobody said how it was made, nobody knows; lubricant has no fit.
 */
export function designOfBuild(ledger: Ledger, buildId: number): TestEvidence['design'] {
	const parts = billView(ledger, buildId)
		.map(({ part }) => part)
		.filter(({ kind }) => kind !== 'lubricant');
	return {
		frozen: parts.length > 0 && buildLock(ledger, buildId) !== null,
		handFittedParts: parts.filter(({ finish }) => finish !== 'as produced').map(({ mark }) => mark),
		partsWithoutBatch: parts.filter(({ batch }) => batch === '').map(({ mark }) => mark)
	};
}
