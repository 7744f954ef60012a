import { mappingFault, type ColumnMapping } from '$lib/ride/columnMapping';
import type { TableHead } from '$lib/ride/tableHead';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { headOfSource } from './headOfSource';
import { rememberColumns } from './rememberedColumns';
import { rememberedColumns, sourceColumns } from './sourceColumns';

export interface ColumnQuestion {
	importId: number;
	fileName: string;
	head: TableHead;
	/** what was said of this file or of this header before; null = nothing */
	mapping: ColumnMapping | null;
	/** other files that wait with the same header */
	others: number;
}

interface AskingRow {
	importId: number;
	sha256: string;
	fileName: string;
}

const ASKING = "SELECT id AS importId, sha256, file_name AS fileName FROM import WHERE stage = 'asks'";

/**
 * What a file that waits asks of its columns.
 *
 * @throws LedgerRefusal not-found when it does not wait, or its table is gone
 */
export function columnQuestion(ledger: Ledger, importId: number): ColumnQuestion {
	const { database } = ledger;
	const row = database.prepare<[number], AskingRow>(`${ASKING} AND id = ?`).get(importId);
	const head = row && headOfSource(ledger.folder, row.sha256);
	if (!row || !head) throw new LedgerRefusal('not-found', 'This file does not ask about its columns.');
	const mapping = sourceColumns(database, row.sha256) ?? rememberedColumns(database, head.key);
	const others = asking(ledger, head.key).length - 1;
	return { importId, fileName: row.fileName, head, mapping, others };
}

/**
 * Names the columns of a file that waits, remembers them for its header, and has it and all others that wait with the
 * same header read.
 *
 * @returns how many files are read now
 * @throws LedgerRefusal wrong-value for a mapping that does not fit; not-found
 */
export function nameColumns(ledger: Ledger, actor: Actor, importId: number, mapping: ColumnMapping): number {
	const { database } = ledger;
	return database
		.transaction((): number => {
			const { head } = columnQuestion(ledger, importId);
			const fault = mappingFault(mapping, head.names.length);
			if (fault) throw new LedgerRefusal('wrong-value', fault);
			const now = ledger.now();
			const stored = JSON.stringify(mapping);
			rememberColumns(ledger, actor, head.key, mapping);
			const files = asking(ledger, head.key);
			for (const { importId: id, sha256 } of files) {
				database
					.prepare(
						`INSERT INTO source_columns (sha256, mapping) VALUES (?, ?)
						ON CONFLICT (sha256) DO UPDATE SET mapping = excluded.mapping`
					)
					.run(sha256, stored);
				database
					.prepare(
						`UPDATE import SET stage = 'waiting', attempts = 0, code = NULL, sentence = NULL, technical = NULL,
							changed_ms = ? WHERE id = ? AND stage = 'asks'`
					)
					.run(now, id);
			}
			leaveTrail(ledger, actor, 'named the columns', 'import', importId, { mapping, files: files.length });
			return files.length;
		})
		.immediate();
}

/** All that wait with this header. */
function asking(ledger: Ledger, key: string): AskingRow[] {
	return ledger.database
		.prepare<[], AskingRow>(ASKING)
		.all()
		.filter(({ sha256 }) => headOfSource(ledger.folder, sha256)?.key === key);
}
