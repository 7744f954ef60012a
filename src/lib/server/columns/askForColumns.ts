import type { FileRefusal } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { setStage, type QueuedImport } from '../queue/importQueue';
import { headOfSource } from './headOfSource';
import { rememberedColumns, sourceColumns } from './sourceColumns';

/**
 * A logger's table whose columns must be named: where a person named those of this header before, it waits to be
 * read by them, else it asks. The file is kept either way.
 */
export function askForColumns(ledger: Ledger, queued: QueuedImport, refusal: FileRefusal): void {
	const { database } = ledger;
	database
		.transaction(() => {
			const head = headOfSource(ledger.folder, queued.sha256);
			const mapping = head && rememberedColumns(database, head.key);
			// a mapping that was tried and does not fit asks again, or the file would go round in circles
			if (!mapping || sourceColumns(database, queued.sha256))
				return setStage(ledger, queued, 'asks', refusal);
			database
				.prepare('INSERT INTO source_columns (sha256, mapping) VALUES (?, ?)')
				.run(queued.sha256, JSON.stringify(mapping));
			setStage(ledger, queued, 'waiting', null);
		})
		.immediate();
}
