import { toInstant } from '../../ledger/instants';
import type { Ledger } from '../../ledger/openLedger';
import type { Instant } from '../../views';
import { QUESTIONS } from './questionList';

/** Answers that were given to several rides at once. */
export interface AnswerBatchView {
	id: number;
	title: string;
	rides: number;
	by: string;
	at: Instant;
	undone: { by: string; at: Instant } | null;
}

interface StoredBatch {
	id: number;
	atMs: number;
	by: string;
	undoneBy: string | null;
	undoneMs: number | null;
	rides: number;
	question: string;
}

/** The latest answers to many rides, the newest first; none whose rides are gone. */
export function listAnswerBatches(ledger: Ledger, limit: number): AnswerBatchView[] {
	return ledger.database
		.prepare<[number], StoredBatch>(
			`SELECT b.id, b.at_ms AS atMs, p.code AS by, u.code AS undoneBy, b.undone_ms AS undoneMs,
				(SELECT count(DISTINCT ride_id) FROM answer_batch_change WHERE batch_id = b.id) AS rides,
				b.question
			FROM answer_batch b JOIN person p ON p.id = b.actor_id LEFT JOIN person u ON u.id = b.undone_by
			WHERE EXISTS (SELECT 1 FROM answer_batch_change WHERE batch_id = b.id)
			ORDER BY b.id DESC LIMIT ?`
		)
		.all(limit)
		.map(({ id, atMs, by, undoneBy, undoneMs, rides, question }) => ({
			id,
			title: QUESTIONS.find(({ name }) => name === question)?.title ?? question,
			rides,
			by,
			at: toInstant(atMs),
			undone: undoneMs === null ? null : { by: undoneBy ?? '', at: toInstant(undoneMs) }
		}));
}
