import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { ExportOptions } from './exportArchive';

/**
 * Writes down that somebody takes the ledger out of the house, and what goes along. Names and weights of
 * people only the owner takes.
 *
 * @throws LedgerRefusal not-allowed
 */
export function noteExport(
	ledger: Ledger,
	actor: Actor,
	what: 'archive' | 'tables',
	options: ExportOptions
): void {
	if (options.names && actor.role !== 'owner')
		throw new LedgerRefusal('not-allowed', "Only the ledger's owner exports people's names.");
	leaveTrail(ledger, actor, 'exported', 'ledger', what, {
		names: options.names === true,
		...(what === 'archive' && {
			sources: options.sources === true,
			attachments: options.attachments === true
		})
	});
}
