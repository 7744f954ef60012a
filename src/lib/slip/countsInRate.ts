import { REFERENCE_SLIP_CRANK_DEG, type SlipEvent } from './analysis';

/**
 * Whether an event is one that the rate is about: a slip of at least the reference size (90 crank degrees)
 * that begins on an observed stretch. All others are listed apart from the rate. The ledger counts by the
 * same rule in SQL (`IN_THE_RATE`, src/lib/server/rates/eventTallies.ts).
 */
export function countsInRate({
	kind,
	observed,
	overrunCrankDeg
}: Pick<SlipEvent, 'kind' | 'observed' | 'overrunCrankDeg'>): boolean {
	return kind === 'slip' && observed && overrunCrankDeg.value >= REFERENCE_SLIP_CRANK_DEG;
}
