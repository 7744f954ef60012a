import type { CriterionState } from '$lib/server';
import type { WordId } from '$lib/ui/wordNames';

/** The entry that explains each criterion; a new criterion needs one before it can be shown. */
export const CRITERION_MEANINGS: Readonly<Record<CriterionState['name'], WordId>> = {
	'stop rule': 'stop-rule',
	rate: 'rate',
	wheels: 'test-spread',
	riders: 'test-spread',
	'counted against expected': 'expected',
	'high torque': 'hub-torque',
	'wet and dry': 'test-spread',
	'last third': 'last-third',
	'slips not found': 'not-found',
	wear: 'distance-to-limit',
	design: 'frozen-design',
	'bench check': 'bench-check',
	review: 'verdict',
	incidents: 'incident',
	'build sheet': 'build'
};
