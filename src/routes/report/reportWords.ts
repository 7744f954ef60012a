import type { WordId } from '$lib/ui/wordNames';
import { wordOf, type Word } from '$lib/ui/words';

const FIGURES: readonly WordId[] = [
	'slip',
	'reference-slip',
	'total-distance',
	'observed-distance',
	'age',
	'hub-torque',
	'rate',
	'limits',
	'upper-limit',
	'bursts',
	'unreviewed',
	'episode',
	'false-alarms',
	'times-as-often',
	'expected',
	'two-lists',
	'power-strokes',
	'slips-by-age',
	'trend',
	'analysis-version',
	'file-hash'
];
const DECISION: readonly WordId[] = [
	'criteria',
	'plan',
	'confidence',
	'stop-rule',
	'test-spread',
	'last-third',
	'not-found',
	'distance-to-limit',
	'frozen-design',
	'incident',
	'record'
];

/** What a report prints the meaning of: its figures, and where criteria were set the words of those. */
export function reportWords(criteria: boolean): Word[] {
	return (criteria ? [...FIGURES, ...DECISION] : FIGURES).map(wordOf);
}
