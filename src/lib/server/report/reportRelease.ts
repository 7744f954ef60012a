import type { CriterionState, NumberWords, ReleaseCriteria } from '$lib/release/criteria';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Decision } from '../release/releaseDecisions';
import { releaseView } from '../release/releaseView';
import type { Instant } from '../views';

/** How a build stands against its criteria, as a report says it: without the codes of people. */
export interface ReportRelease {
	/** null before criteria were set */
	readonly criteria: {
		readonly version: number;
		readonly setAt: Instant;
		readonly reason: string;
		/** the build that it is meant to replace */
		readonly reference: string | null;
		readonly asked: ReleaseCriteria;
		readonly state: 'stopped' | 'not yet' | 'all hold';
		readonly states: readonly CriterionState[];
	} | null;
	/** the newest first */
	readonly decisions: readonly {
		readonly decision: Decision;
		readonly reason: string;
		readonly at: Instant;
		readonly criteriaVersion: number;
		readonly analysisVersion: number;
		readonly recordSha256: string;
		/** whether the stored record still has its hash */
		readonly whole: boolean;
	}[];
	readonly tried: { readonly builds: number; readonly plans: number };
}

/** @throws LedgerRefusal not-found */
export function reportRelease(ledger: Ledger, buildId: number, words: NumberWords): ReportRelease {
	const { versions, reference, standing, decisions, tried } = releaseView(ledger, buildId, words);
	const [current] = versions;
	return {
		criteria:
			current && standing
				? {
						version: current.version,
						setAt: toInstant(current.setMs),
						reason: current.reason,
						reference: reference?.name ?? null,
						asked: current.criteria,
						state: standing.state.state,
						states: standing.state.criteria
					}
				: null,
		decisions: decisions.map((signed) => ({
			decision: signed.decision,
			reason: signed.reason,
			at: toInstant(signed.atMs),
			criteriaVersion: signed.criteriaVersion,
			analysisVersion: signed.analysisVersion,
			recordSha256: signed.recordSha256,
			whole: signed.whole
		})),
		tried
	};
}
