import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { Ledger } from './ledger/openLedger';
import { currentVersion } from './queue/analysisVersions';
import { countUnfinishedImports } from './queue/importQueue';

export interface Health {
	state: 'open';
	/** files that wait or are being read */
	unfinishedImports: number;
	/** whether somebody holds the right to analyse */
	runner: boolean;
	analysisVersion: number;
	ledgerAnalysisVersion: number;
}

/** What a watcher wants to know; nothing about people or rides. */
export function health(ledger: Ledger): Health {
	return {
		state: 'open',
		unfinishedImports: countUnfinishedImports(ledger),
		runner: ledger.database.prepare("SELECT 1 FROM lease WHERE name = 'runner'").get() !== undefined,
		analysisVersion: ANALYSIS_VERSION,
		ledgerAnalysisVersion: currentVersion(ledger)
	};
}
