import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';
import { ANSWER_NAMES, type AnswerName } from './rideAnswers';

/** Who gave the answer that stands. */
export interface WhoSaid {
	/** code of the person */
	by: string;
	at: Instant;
}

interface TrailRow {
	atMs: number;
	code: string;
	action: string;
	detail: string;
}

/**
 * Who said what stands in a ride, from its trail: the latest entry that names the answer. An answer that
 * came with the file is whose file it was.
 */
export function whoSaid(ledger: Ledger, rideId: number): Partial<Record<AnswerName, WhoSaid>> {
	const rows = ledger.database
		.prepare<[string], TrailRow>(
			`SELECT t.at_ms AS atMs, p.code, t.action, t.detail FROM trail t JOIN person p ON p.id = t.actor_id
			WHERE t.subject = 'ride' AND t.subject_id = ? AND t.action IN ('handed in', 'assigned') ORDER BY t.id`
		)
		.all(String(rideId));
	const said: Partial<Record<AnswerName, WhoSaid>> = {};
	for (const { atMs, code, action, detail } of rows) {
		const named = JSON.parse(detail) as Record<string, unknown>;
		const names = action === 'handed in' ? ANSWER_NAMES : ANSWER_NAMES.filter((name) => name in named);
		for (const name of names) said[name] = { by: code, at: toInstant(atMs) };
	}
	return said;
}

/** The code of the person who changed an answer of a ride last; null when the trail does not tell. */
export function whoChanged(ledger: Ledger, rideId: number, name: AnswerName): string | null {
	return whoSaid(ledger, rideId)[name]?.by ?? null;
}
