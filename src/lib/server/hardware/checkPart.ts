import { checkNeededNumber, checkNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import { LedgerRefusal } from '../refusal';
import {
	PART_FINISHES,
	PART_KINDS,
	type PartFinish,
	type PartKind,
	type PartLength,
	type PartRecord
} from './partRecords';

/** A part as a form or the example hands it in; what is missing is empty. */
export interface PartInput {
	number: string;
	revision?: string;
	batch?: string;
	name: string;
	kind: string;
	material?: string;
	finish?: string;
	pointsOfEngagement?: number | null;
	note?: string;
	lengths?: readonly {
		what: string;
		nominalMm: number | null;
		minusMm?: number | null;
		plusMm?: number | null;
	}[];
}

export type PartFacts = Omit<PartRecord, 'id' | 'rowVersion' | 'example'> & { lengths: PartLength[] };

const MOST_LENGTHS = 30;

/**
 * A part's facts, cleaned and within reason.
 *
 * @throws LedgerRefusal wrong-value, naming what is wrong
 */
export function checkPart(input: PartInput): PartFacts {
	const lengths = (input.lengths ?? []).map(checkLength);
	if (lengths.length > MOST_LENGTHS)
		throw new LedgerRefusal('wrong-value', `A part has at most ${MOST_LENGTHS} lengths.`);
	lengths.sort((a, b) => (a.what.toLowerCase() < b.what.toLowerCase() ? -1 : 1));
	const twice = lengths.find(
		({ what }, i) => i > 0 && what.toLowerCase() === lengths[i - 1].what.toLowerCase()
	);
	if (twice) throw new LedgerRefusal('wrong-value', `The length "${twice.what}" stands there twice.`);
	return {
		number: checkText('The part number', input.number, { min: 1, max: 60 }),
		revision: checkText('The revision', input.revision, { min: 0, max: 30 }),
		batch: checkText('The batch', input.batch, { min: 0, max: 60 }),
		name: checkText("The part's name", input.name, { min: 1, max: 120 }),
		kind: oneOf('What the part is', input.kind, PART_KINDS) as PartKind,
		material: checkText('The material', input.material, { min: 0, max: 200 }),
		finish: oneOf('How the part was made', input.finish ?? '', ['', ...PART_FINISHES]) as PartFinish,
		pointsOfEngagement: checkNumber('The points of engagement', input.pointsOfEngagement, {
			min: 3,
			max: 720,
			whole: true
		}),
		note: checkText('The note', input.note, { min: 0, max: 2000 }),
		lengths
	};
}

function checkLength(length: NonNullable<PartInput['lengths']>[number]): PartLength {
	const what = checkText('The name of a length', length.what, { min: 1, max: 60 });
	const nominalMm = checkNeededNumber(`The length drawn for "${what}"`, length.nominalMm, {
		min: 0.001,
		max: 500,
		unit: 'mm'
	});
	const tolerance = { min: 0, max: 20, unit: 'mm' };
	const minusMm = checkNumber(`Minus of "${what}"`, length.minusMm, tolerance) ?? 0;
	const plusMm = checkNumber(`Plus of "${what}"`, length.plusMm, tolerance) ?? 0;
	if (minusMm >= nominalMm)
		throw new LedgerRefusal(
			'wrong-value',
			`With ${minusMm} mm less than the drawn ${nominalMm} mm nothing would be left of "${what}".`
		);
	return { what, nominalMm, minusMm, plusMm };
}

function oneOf(what: string, value: string, allowed: readonly string[]): string {
	if (!allowed.includes(value))
		throw new LedgerRefusal('wrong-value', `${what} is one of: ${allowed.filter(Boolean).join(', ')}.`);
	return value;
}
