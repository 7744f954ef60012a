import { conditionalRateRatio } from '$lib/reliability/conditionalRateRatio';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { BuildRow, ComparisonView, RateView } from '../views';
import { ageLines } from './ageLines';
import { CONFIDENCE, RATE_UNIT_M } from './countView';
import { evidenceParts } from '../rides/evidenceParts';
import { buildRows } from './programmeRows';
import { ratioSentence } from './ratioSentence';

/**
 * Builds set against each other: the first one named is what the others are measured by.
 *
 * @param buildIds in the order wanted; each once
 * @throws LedgerRefusal not-found
 */
export function comparison(ledger: Ledger, buildIds: readonly number[]): ComparisonView {
	const facts = evidenceParts(ledger);
	const rows = buildRows(ledger, facts);
	const builds = [...new Set(buildIds)].map((id) => {
		const build = rows.find((row) => row.id === id);
		if (!build) throw new LedgerRefusal('not-found', 'There is no such build.');
		return build;
	});
	const [reference, ...others] = builds;
	return {
		builds,
		lines: ageLines(ledger, builds, facts),
		ratios: others.map((build) => ratioOf(build, reference))
	};
}

/**
 * How often a build slips against the reference, per observed km. What nobody has reviewed counts against
 * the build that has to prove itself: as a slip there, as none on the reference. Beside it stands what
 * the ratio would be if everything found were a slip on both, and the best case of the build.
 */
function ratioOf(build: BuildRow, reference: BuildRow): ComparisonView['ratios'][number] {
	const decides = ratioOfRates(build.counted.worstCase, reference.counted.bestCase);
	const asFound = ratioOfRates(build.counted.worstCase, reference.counted.worstCase);
	const best = ratioOfRates(build.counted.bestCase, reference.counted.worstCase);
	return {
		buildId: build.id,
		build: build.name,
		...decides,
		sentence: ratioSentence(build, reference, { decides, asFound, best })
	};
}

function ratioOfRates(counted: RateView, measure: RateView) {
	const { ratio, lower, upper, pValue } = conditionalRateRatio(
		{
			countA: counted.count,
			exposureA: counted.observedM / RATE_UNIT_M,
			countB: measure.count,
			exposureB: measure.observedM / RATE_UNIT_M
		},
		CONFIDENCE
	);
	return {
		ratio: Number.isFinite(ratio) ? ratio : null,
		lower,
		upper: Number.isFinite(upper) ? upper : null,
		confidence: CONFIDENCE,
		pValue: Number.isNaN(ratio) ? null : pValue
	};
}
