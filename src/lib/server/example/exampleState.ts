import type { Ledger } from '../ledger/openLedger';

export interface ExampleState {
	installed: boolean;
	/** files of the example that have their final answer */
	ridesReady: number;
	ridesTotal: number;
}

/** Whether the example workshop is in the ledger and how far its files are. */
export function exampleState(ledger: Ledger): ExampleState {
	const { ready, total } = ledger.database
		.prepare<[], { ready: number; total: number }>(
			`SELECT coalesce(sum(stage NOT IN ('receiving', 'waiting', 'analysing')), 0) AS ready,
				count(*) AS total FROM import WHERE example = 1`
		)
		.get()!;
	const hardware = ledger.database.prepare('SELECT 1 FROM wheel WHERE example = 1 LIMIT 1').get();
	return { installed: total > 0 || hardware !== undefined, ridesReady: ready, ridesTotal: total };
}
