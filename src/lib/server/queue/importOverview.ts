import type { Ledger } from '../ledger/openLedger';
import type { ImportOverview } from '../views';
import { BROKE_OFF_AFTER_MS } from '../store/brokenUploads';
import { importViews } from './importQueue';

const DAY_MS = 24 * 3600 * 1000;
/** what wants somebody stays in the list for so long, unless newer ones push it out */
const SHOWN_FOR_MS = 14 * DAY_MS;
const SHOWN = 20;
const SETTLED = 20;

/** Lines for what is under way or went wrong; a thousand files that went well are a number. */
const WANTED = `(i.stage IN ('analysing', 'unpacking', 'receiving')
	OR (i.stage IN ('refused', 'failed', 'asks') AND i.changed_ms >= @since))`;

/** Files that came, so that a list of thousands can be read. */
export function importOverview(ledger: Ledger): ImportOverview {
	const now = ledger.now();
	const since = { since: now - SHOWN_FOR_MS };
	const lines = importViews(ledger, WANTED, since, SHOWN);
	const all = ledger.database
		.prepare<[object], { n: number }>(`SELECT count(*) AS n FROM import i WHERE ${WANTED}`)
		.get(since)!.n;
	return {
		lines,
		more: all - lines.length,
		settled: importViews(
			ledger,
			"i.stage IN ('done', 'already in the ledger', 'unpacked', 'left out')",
			{},
			SETTLED
		),
		underWay: ledger.database
			.prepare<[number], ImportOverview['underWay']>(
				`SELECT coalesce(sum(stage = 'waiting'), 0) AS waiting, coalesce(sum(stage = 'analysing'), 0) AS reading,
					coalesce(sum(stage = 'receiving' AND NOT EXISTS (
						SELECT 1 FROM upload u WHERE u.import_id = i.id AND u.sha256 IS NULL AND u.touched_ms < ?
					)), 0) AS receiving,
					coalesce(sum(stage = 'unpacking'), 0) AS unpacking
				FROM import i WHERE stage IN ('waiting', 'analysing', 'receiving', 'unpacking')`
			)
			.get(now - BROKE_OFF_AFTER_MS)!,
		lately: ledger.database
			.prepare<[number], ImportOverview['lately']>(
				`SELECT coalesce(sum(stage = 'done'), 0) AS rides,
					coalesce(sum(stage = 'already in the ledger'), 0) AS known,
					coalesce(sum(stage = 'left out'), 0) AS leftOut,
					coalesce(sum(stage IN ('refused', 'failed')), 0) AS refused
				FROM import WHERE changed_ms >= ?`
			)
			.get(now - DAY_MS)!
	};
}
