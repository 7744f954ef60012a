import { shareLimits } from '$lib/reliability/shareLimits';
import type { Ledger } from '../ledger/openLedger';
import { waitingCounts } from './waitingEvents';

/** How often something came out as it should, with exact 95 % limits. */
export interface MeasuredShare {
	readonly right: number;
	readonly shown: number;
	readonly lower: number;
	readonly upper: number;
}

/** What the review itself is worth, a reviewer: it measures people, not hubs. */
export interface ReviewerFigures {
	readonly code: string;
	/** answers on events, not on what measures the review */
	readonly decided: number;
	/** of slips that were put in: confirmed */
	readonly putIn: MeasuredShare;
	/** of events on wheels known to be good: rejected */
	readonly knownGood: MeasuredShare;
	/** second looks, and those that came to another answer */
	readonly secondLooks: number;
	readonly disagreed: number;
}

const CONFIDENCE = 0.95;

interface Row {
	code: string;
	purpose: string;
	answer: 'confirmed' | 'rejected';
	good: 0 | 1;
	disagrees: 0 | 1;
}

/** Reviewers with at least one answer, by their codes. */
export function reviewFigures(ledger: Ledger): ReviewerFigures[] {
	const rows = ledger.database
		.prepare<[], Row>(
			`SELECT p.code, i.purpose, i.answer, coalesce(w.known_good, 0) AS good, i.disagrees
			FROM review_item i JOIN person p ON p.id = i.reviewer_id JOIN ride r ON r.id = i.ride_id
			LEFT JOIN wheel w ON w.id = r.wheel_id
			WHERE i.answer IN ('confirmed', 'rejected') ORDER BY p.code`
		)
		.all();
	return [...new Set(rows.map(({ code }) => code))].map((code) => {
		const own = rows.filter((row) => row.code === code);
		const second = own.filter(({ purpose }) => purpose === 'second look');
		return {
			code,
			decided: own.filter(({ purpose }) => purpose === 'first look' || purpose === 'second look').length,
			putIn: shareOf(
				own.filter(({ purpose }) => purpose === 'put in'),
				'confirmed'
			),
			knownGood: shareOf(
				own.filter(({ purpose, good }) => purpose !== 'put in' && good === 1),
				'rejected'
			),
			secondLooks: second.length,
			disagreed: second.filter(({ disagrees }) => disagrees === 1).length
		};
	});
}

function shareOf(rows: readonly Row[], right: Row['answer']): MeasuredShare {
	const of = rows.filter(({ answer }) => answer === right).length;
	const { lower, upper } = shareLimits(of, rows.length, CONFIDENCE);
	return { right: of, shown: rows.length, lower, upper };
}

/** How much lies before a reviewer, and how many events and probes that person has answered so far. */
export function reviewProgress(
	ledger: Ledger,
	personId: number
): { firstLooks: number; secondLooks: number; answered: number } {
	const answered = ledger.database
		.prepare<[number], number>(
			"SELECT count(*) FROM review_item WHERE reviewer_id = ? AND answer IN ('confirmed', 'rejected')"
		)
		.pluck()
		.get(personId)!;
	return { ...waitingCounts(ledger, personId), answered };
}
