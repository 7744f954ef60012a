import type { Ledger } from '../../ledger/openLedger';
import { readAnswers } from '../../marks/markAnswers';
import { readAnswersOf } from '../assignRide';
import { ANSWER_NAMES } from '../rideAnswers';
import { readCuts } from '../rideParts';

/** Everything that people said of a ride and that answers to many rides can change; values as JSON has them. */
export type RideSnapshot = Readonly<Record<string, unknown>>;

/** what a lap meant stands under this and the lap's instant */
export const LAP = 'lap ';

export function rideSnapshot(ledger: Ledger, rideId: number): RideSnapshot {
	const answers = readAnswersOf(ledger, rideId);
	const twin = ledger.database
		.prepare<[number], { decision: string | null }>('SELECT twin_decision AS decision FROM ride WHERE id = ?')
		.get(rideId);
	return {
		...Object.fromEntries(ANSWER_NAMES.map((name) => [name, answers[name]])),
		twinDecision: twin?.decision ?? null,
		cuts: readCuts(ledger, rideId).get(rideId) ?? [],
		...Object.fromEntries(
			readAnswers(ledger, rideId).map(({ markMs, answer }) => [`${LAP}${markMs}`, answer])
		)
	};
}

export interface SnapshotChange {
	readonly answer: string;
	readonly before: unknown;
	readonly after: unknown;
}

/** What differs; a lap without an answer reads as null. */
export function snapshotChanges(before: RideSnapshot, after: RideSnapshot): SnapshotChange[] {
	const names = [...new Set([...Object.keys(before), ...Object.keys(after)])].sort();
	return names
		.map((answer) => ({ answer, before: before[answer] ?? null, after: after[answer] ?? null }))
		.filter((change) => JSON.stringify(change.before) !== JSON.stringify(change.after));
}
