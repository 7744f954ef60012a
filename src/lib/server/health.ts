import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { openingRefusal } from './ledger/openingRefusal';
import type { Ledger } from './ledger/openLedger';
import { log } from './log/log';
import { currentVersion } from './queue/analysisVersions';
import { countUnfinishedImports } from './queue/importQueue';
import { LedgerRefusal, type LedgerRefusalCode } from './refusal';

export type LedgerTrouble = LedgerRefusalCode | 'not-known';

/** What a watcher wants to know; nothing about people or rides. */
export interface Health {
	state: 'open';
	analysisVersion: number;
	/** false = the ledger could not be read just now, and what is in it is not known */
	ledgerRead: boolean;
	/** what kept it from being read, as one fixed word; the log says more. null = nothing */
	trouble: LedgerTrouble | null;
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
	let ledger: Ledger | null = null;
	try {
		ledger = open();
		return {
			...lives,
			ledgerRead: true,
			trouble: null,
			unfinishedImports: countUnfinishedImports(ledger),
			runner: ledger.database.prepare("SELECT 1 FROM lease WHERE name = 'runner'").get() !== undefined,
			ledgerAnalysisVersion: currentVersion(ledger)
		};
	} catch (error) {
		log.failure('ledger not read', error);
		return {
			...lives,
			ledgerRead: false,
			trouble: troubleOf(error, ledger?.folder ?? null),
			unfinishedImports: null,
			runner: null,
			ledgerAnalysisVersion: null
		};
	}
}

function troubleOf(error: unknown, folder: string | null): LedgerTrouble {
	if (/^SQLITE_(BUSY|LOCKED)/.test((error as { code?: string } | null)?.code ?? '')) return 'ledger-in-use';
	const known = folder === null ? error : openingRefusal(error, folder);
	return known instanceof LedgerRefusal ? known.code : 'not-known';
}
