import { liesBetweenFaces, STACK_SIDES, type StackSide } from '$lib/hardware/stackElement';
import { checkText } from '../ledger/checkText';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { StackElementRecord } from './stackRows';

export interface StackElementInput {
	label: string;
	side: string;
	nominalMm: number | null;
	/** null = 0 */
	minusMm?: number | null;
	plusMm?: number | null;
	measuredMm?: number | null;
	/** -1, 0 or 1; missing = 0 */
	inEngagement?: number;
	inEndFloat?: number;
	partId?: number | null;
}

export interface StackInput {
	/** the freehub variant in the workshop's words */
	variant: string;
	overLocknutMm?: number | null;
	dishedOnId?: number | null;
	rimOffsetMm?: number | null;
	note?: string;
	elements: StackElementInput[];
}

export interface CheckedStack {
	variant: string;
	overLocknutMm: number | null;
	dishedOnId: number | null;
	rimOffsetMm: number | null;
	note: string;
	elements: StackElementRecord[];
}

const MOST_ELEMENTS = 60;
/** a length that was measured and one of the drawing differ by more than this only when one is mistyped */
const MOST_DIFFERENCE_MM = 5;

/**
 * A stack as it was typed, checked as a whole: nothing of it is kept when something is wrong.
 *
 * @throws LedgerRefusal wrong-value that names the element and the value
 */
export function checkStack(ledger: Ledger, input: StackInput): CheckedStack {
	const variant = checkText("The freehub variant's name", input.variant, { min: 1, max: 80 });
	if (input.elements.length === 0)
		throw new LedgerRefusal('wrong-value', 'A stack has at least one axial element.');
	if (input.elements.length > MOST_ELEMENTS)
		throw new LedgerRefusal('wrong-value', `A stack has at most ${MOST_ELEMENTS} elements.`);
	const elements = input.elements.map((element) => checkElement(ledger, element));
	const total = elements.reduce(
		(sum, { side, nominalMm }) => sum + (liesBetweenFaces(side) ? nominalMm : 0),
		0
	);
	if (total > 300)
		throw new LedgerRefusal(
			'wrong-value',
			`The elements add up to ${total} mm; a hub is at most 300 mm wide.`
		);
	return {
		variant,
		overLocknutMm: checkRange('The over-locknut distance', input.overLocknutMm ?? null, 50, 300),
		dishedOnId: input.dishedOnId ?? null,
		rimOffsetMm: checkRange('The rim offset', input.rimOffsetMm ?? null, -50, 50),
		note: checkText('The note', input.note, { min: 0, max: 1000 }),
		elements
	};
}

function checkElement(ledger: Ledger, input: StackElementInput): StackElementRecord {
	const label = checkText("An element's name", input.label, { min: 1, max: 80 });
	if (!STACK_SIDES.includes(input.side as StackSide))
		throw new LedgerRefusal('wrong-value', `Say of ${label} on which side it lies.`);
	const nominalMm = checkRange(`The drawn length of ${label}`, input.nominalMm, 0, 300);
	if (nominalMm === null) throw new LedgerRefusal('wrong-value', `The drawn length of ${label} is missing.`);
	const minusMm = checkRange(`Minus of ${label}`, input.minusMm ?? 0, 0, 10) ?? 0;
	const plusMm = checkRange(`Plus of ${label}`, input.plusMm ?? 0, 0, 10) ?? 0;
	if (minusMm > nominalMm)
		throw new LedgerRefusal('wrong-value', `With its minus ${label} could be shorter than nothing.`);
	const measuredMm = checkRange(`The measured length of ${label}`, input.measuredMm ?? null, 0, 300);
	if (measuredMm !== null && Math.abs(measuredMm - nominalMm) > MOST_DIFFERENCE_MM)
		throw new LedgerRefusal(
			'wrong-value',
			`${label} was measured as ${measuredMm} mm and is drawn as ${nominalMm} mm: one of them is mistyped, or it is another part.`
		);
	const partId = input.partId ?? null;
	if (partId !== null && !ledger.database.prepare('SELECT 1 FROM part WHERE id = ?').get(partId))
		throw new LedgerRefusal('not-found', `The part named for ${label} is not in the ledger.`);
	return {
		label,
		side: input.side as StackSide,
		nominalMm,
		minusMm,
		plusMm,
		measuredMm,
		inEngagement: checkSign(label, input.inEngagement),
		inEndFloat: checkSign(label, input.inEndFloat),
		partId
	};
}

function checkRange(what: string, value: number | null, least: number, most: number): number | null {
	if (value === null) return null;
	if (value >= least && value <= most) return value;
	throw new LedgerRefusal('wrong-value', `${what} is a number from ${least} to ${most} mm.`);
}

function checkSign(label: string, sign: number | undefined): -1 | 0 | 1 {
	const value = sign ?? 0;
	if (value === -1 || value === 0 || value === 1) return value;
	throw new LedgerRefusal(
		'wrong-value',
		`Say of ${label} whether a thicker one takes away, adds or neither.`
	);
}
