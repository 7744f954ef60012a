import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { readSetting, writeSetting } from '../settings/storedSetting';

/** True until somebody chose how to begin or put anything in: pages then offer the example. */
export function ledgerIsEmpty(ledger: Ledger): boolean {
	if (readSetting(ledger, 'started') !== null) return false;
	const anything = ledger.database
		.prepare(
			'SELECT 1 FROM (SELECT 1 FROM wheel UNION ALL SELECT 1 FROM build UNION ALL SELECT 1 FROM import) LIMIT 1'
		)
		.get();
	return anything === undefined;
}

/** Begins with nothing in the ledger; pages do not offer the example again at the start. */
export function startEmpty(ledger: Ledger, actor: Actor): void {
	ledger.database
		.transaction(() => {
			writeSetting(ledger, 'started', 'empty');
			leaveTrail(ledger, actor, 'started', 'ledger', 'empty');
		})
		.immediate();
}
