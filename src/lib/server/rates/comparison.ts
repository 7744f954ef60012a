import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { LedgerRefusal } from '../refusal';
import type { ComparisonView } from '../views';
import { ageLines } from './ageLines';
import { evidenceParts } from '../rides/evidenceParts';
import { buildRows } from './programmeRows';

/**
 * The counted slips of builds over the distance since they were fitted, wheel by wheel.
 *
 * @param buildIds in the order wanted; each once
 * @throws LedgerRefusal not-found
 */
export function comparison(ledger: Ledger, buildIds: readonly number[]): ComparisonView {
	return remember(ledger, `age lines of ${buildIds.join()}`, () => compute(ledger, buildIds));
}

function compute(ledger: Ledger, buildIds: readonly number[]): ComparisonView {
	const facts = evidenceParts(ledger);
	const rows = buildRows(ledger, facts);
	const builds = [...new Set(buildIds)].map((id) => {
		const build = rows.find((row) => row.id === id);
		if (!build) throw new LedgerRefusal('not-found', 'There is no such build.');
		return build;
	});
	return { builds, lines: ageLines(ledger, builds, facts) };
}
