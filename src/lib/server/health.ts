import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { Ledger } from './ledger/openLedger';
import { log } from './log/log';
import { currentVersion } from './queue/analysisVersions';
import { countUnfinishedImports } from './queue/importQueue';

/** What a watcher wants to know; nothing about people or rides. */
export interface Health {
	state: 'open';
	analysisVersion: number;
	/** false = the ledger could not be read just now; the log says why, and what is in it is not known */
	ledgerRead: boolean;
	/** files that wait or are being read */
	unfinishedImports: number | null;
	/** whether somebody holds the right to analyse */
	runner: boolean | null;
	ledgerAnalysisVersion: number | null;
}

/**
 * That the server lives, whatever is the matter with the disk: who ends a server because its disk is full takes away
 * the pages that would say so. Whether it can do its work is another question (`readiness`).
 *
 * @param open gives the ledger; may throw
 */
export function health(open: () => Ledger): Health {
	const lives = { state: 'open' as const, analysisVersion: ANALYSIS_VERSION };
	try {
		const ledger = open();
		return {
			...lives,
			ledgerRead: true,
			unfinishedImports: countUnfinishedImports(ledger),
			runner: ledger.database.prepare("SELECT 1 FROM lease WHERE name = 'runner'").get() !== undefined,
			ledgerAnalysisVersion: currentVersion(ledger)
		};
	} catch (error) {
		log.failure('ledger not read', error);
		return {
			...lives,
			ledgerRead: false,
			unfinishedImports: null,
			runner: null,
			ledgerAnalysisVersion: null
		};
	}
}
