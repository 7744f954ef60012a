import type { Ledger } from '../ledger/openLedger';
import { attachVerdicts } from '../review/attachVerdicts';
import { writeSetting } from '../settings/storedSetting';

/**
 * Lets pages and statistics read the results of a version, and gives its events the verdicts that stand now.
 * Belongs in the caller's transaction.
 *
 * @returns ids of the verdicts that stand but judge nothing that this version reports
 */
export function setVersion(ledger: Ledger, version: number): number[] {
	const { database } = ledger;
	const judged = database
		.prepare<[], { rideId: number }>(
			'SELECT DISTINCT ride_id AS rideId FROM verdict WHERE superseded_ms IS NULL'
		)
		.all();
	for (const { rideId } of judged) attachVerdicts(ledger, rideId, version);
	writeSetting(ledger, 'analysisVersion', String(version));
	return database
		.prepare<[number], { id: number }>(
			`SELECT v.id FROM verdict v WHERE v.superseded_ms IS NULL AND NOT EXISTS
				(SELECT 1 FROM slip_event e WHERE e.verdict_id = v.id AND e.version = ?) ORDER BY v.id`
		)
		.all(version)
		.map(({ id }) => id);
}

/**
 * What a function would say if another version were the current one: it is made current, asked, and all of it
 * is taken back. So what a page foretells of a switch is what the switch does.
 *
 * @param ask gets the ids of the verdicts that would judge nothing; must not change the ledger
 */
export function asIfVersion<Answer>(
	ledger: Ledger,
	version: number,
	ask: (verdictsWithoutEvent: number[]) => Answer
): Answer {
	let answer: { value: Answer } | null = null;
	try {
		ledger.database
			.transaction(() => {
				answer = { value: ask(setVersion(ledger, version)) };
				throw TAKEN_BACK;
			})
			.immediate();
	} catch (error) {
		if (error !== TAKEN_BACK) throw error;
	}
	return (answer as unknown as { value: Answer }).value;
}

const TAKEN_BACK = new Error('taken back');
