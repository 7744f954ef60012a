import { csvCell } from '$lib/tables/csvCell';
import type { Ledger } from '../ledger/openLedger';
import type { ImportView } from '../views';
import { importViews } from './importQueue';

export interface FileAnswersQuery {
	/** those of one archive alone; its own line stands first */
	archiveId?: number;
	/** refused, failed, left out, broken off or asking alone */
	onlyNotRead?: boolean;
}

/** A page of it: the newest first, going on below a number. */
export interface FileAnswers {
	lines: ImportView[];
	total: number;
	/** the name of the archive, when only its files are asked for; null = there is no such archive */
	archive: string | null;
}

const WHERE = `(@archiveId IS NULL OR i.archive_id = @archiveId OR i.id = @archiveId)
	AND (@onlyNotRead = 0 OR i.stage IN ('refused', 'failed', 'left out', 'asks'))`;

function valuesOf({ archiveId, onlyNotRead }: FileAnswersQuery) {
	return { archiveId: archiveId ?? null, onlyNotRead: onlyNotRead ? 1 : 0 };
}

/** What became of every file that was handed in, a page at a time. */
export function fileAnswers(
	ledger: Ledger,
	query: FileAnswersQuery & { page: number; pageSize: number }
): FileAnswers {
	const values = valuesOf(query);
	const offset = (Math.max(1, query.page) - 1) * query.pageSize;
	const below = ledger.database
		.prepare<[object], number>(
			`SELECT i.id FROM import i WHERE ${WHERE} ORDER BY i.id DESC LIMIT 1 OFFSET @offset`
		)
		.pluck()
		.get({ ...values, offset });
	return {
		lines:
			below === undefined
				? []
				: importViews(ledger, `${WHERE} AND i.id <= @below`, { ...values, below }, query.pageSize),
		total: ledger.database
			.prepare<[object], number>(`SELECT count(*) FROM import i WHERE ${WHERE}`)
			.pluck()
			.get(values)!,
		archive:
			ledger.database
				.prepare<[number | null], string>(
					'SELECT file_name FROM import WHERE id = ? AND archive_sha256 IS NOT NULL'
				)
				.pluck()
				.get(values.archiveId) ?? null
	};
}

const COLUMNS = ['file', 'folder', 'bytes', 'what_became_of_it', 'why', 'detail', 'ride', 'at_utc'] as const;
const PIECE = 1000;

/** The same as comma-separated values (RFC 4180), header first, in pieces: an archive may hold ten thousand files. */
export function* fileAnswersCsv(ledger: Ledger, query: FileAnswersQuery): Generator<string> {
	yield `${COLUMNS.join(',')}\r\n`;
	let below = Number.MAX_SAFE_INTEGER;
	for (;;) {
		const lines = importViews(ledger, `${WHERE} AND i.id < @below`, { ...valuesOf(query), below }, PIECE);
		if (lines.length === 0) return;
		below = lines[lines.length - 1].id;
		yield lines
			.map((one) => [
				one.fileName,
				one.folder,
				one.bytes,
				one.brokeOff ? 'broke off' : one.stage,
				one.sentence,
				one.detail,
				one.rideId,
				one.at
			])
			.map((cells) => `${cells.map(csvCell).join(',')}\r\n`)
			.join('');
	}
}
