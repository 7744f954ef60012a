import { checkText } from '../ledger/checkText';
import { fromInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { INSPECTION_KINDS, type InspectionKind, type InspectionKindName } from './inspectionsKinds';

export interface FindingInput {
	kind: string;
	/** which teeth, which pawl */
	place?: string;
	instrument?: string;
	unit?: string | null;
	resolution?: number | null;
	/** each repeat as it was read */
	values?: number[];
	wearLimit?: number | null;
	limitIs?: string | null;
	words?: string;
}

export interface InspectionInput {
	/** ISO 8601 with a zone */
	at: string;
	/** what the odometer showed; null = not read */
	odometerM?: number | null;
	inspectedBy: number;
	note?: string;
	findings: FindingInput[];
}

/** One thing that was looked at, as it is kept. */
export interface Finding {
	kind: InspectionKindName;
	place: string;
	instrument: string;
	unit: string | null;
	resolution: number | null;
	values: number[];
	wearLimit: number | null;
	limitIs: 'lowest' | 'highest' | null;
	words: string;
}

export interface CheckedInspection {
	atMs: number;
	odometerM: number | null;
	inspectedBy: number;
	note: string;
	findings: Finding[];
}

/**
 * An inspection as it was typed, checked as a whole.
 *
 * @throws LedgerRefusal wrong-value that names the finding and the value; not-found for an unknown person
 */
export function checkInspection(
	ledger: Ledger,
	wheel: { example: number },
	input: InspectionInput
): CheckedInspection {
	refuseStranger(ledger, wheel, input.inspectedBy, 'Say who inspected the wheel.');
	if (input.findings.length === 0)
		throw new LedgerRefusal('wrong-value', 'Write down at least one thing that was looked at.');
	if (input.findings.length > 40)
		throw new LedgerRefusal('wrong-value', 'One inspection holds at most 40 findings.');
	const findings = input.findings.map(checkFinding);
	refuseTwice(findings);
	return {
		atMs: fromInstant(input.at),
		odometerM: checkOdometer(input.odometerM ?? null),
		inspectedBy: input.inspectedBy,
		note: checkText('The note', input.note, { min: 0, max: 2000 }),
		findings
	};
}

/**
 * Who is named must be in the ledger; riders of the invented workshop go with it and can stand for nothing on
 * a wheel that stays.
 *
 * @throws LedgerRefusal not-found with the sentence; wrong-value for a rider of the example
 */
export function refuseStranger(
	ledger: Ledger,
	wheel: { example: number },
	personId: number,
	sentence: string
): void {
	const person = ledger.database
		.prepare<[number], { example: number }>('SELECT example FROM person WHERE id = ?')
		.get(personId);
	if (!person) throw new LedgerRefusal('not-found', sentence);
	if (person.example > wheel.example)
		throw new LedgerRefusal('wrong-value', 'Riders of the example workshop ride its own wheels only.');
}

/** @throws LedgerRefusal wrong-value */
export function checkOdometer(odometerM: number | null): number | null {
	if (odometerM === null || (odometerM >= 0 && odometerM <= 1e9)) return odometerM;
	throw new LedgerRefusal('wrong-value', 'An odometer shows 0 to 1,000,000 km.');
}

function checkFinding(input: FindingInput): Finding {
	const kind = INSPECTION_KINDS.find((one) => one.kind === input.kind);
	if (!kind) throw new LedgerRefusal('wrong-value', 'Say of each finding what was looked at.');
	const name = kind.kind;
	const values = input.values ?? [];
	const words = checkText(`What was seen of the ${name}`, input.words, { min: 0, max: 500 });
	if (values.length === 0 && words === '')
		throw new LedgerRefusal('wrong-value', `Write down of the ${name} what was measured or seen.`);
	const measured = checkMeasured(kind, values, input);
	return {
		kind: name,
		place: checkText(`The place of the ${name}`, input.place, { min: 0, max: 120 }),
		instrument: checkText(`The instrument for the ${name}`, input.instrument, { min: 0, max: 120 }),
		words,
		...measured
	};
}

function checkMeasured(
	{ kind, units, most }: InspectionKind,
	values: number[],
	input: FindingInput
): Pick<Finding, 'unit' | 'resolution' | 'values' | 'wearLimit' | 'limitIs'> {
	if (values.length === 0)
		return { unit: null, resolution: null, values: [], wearLimit: null, limitIs: null };
	if (units.length === 0)
		throw new LedgerRefusal('wrong-value', `The ${kind} is written down in words, not as a number.`);
	if (values.length > 30) throw new LedgerRefusal('wrong-value', `At most 30 repeats of the ${kind}.`);
	const within = (value: number) => value >= 0 && value <= most;
	const unit = input.unit ?? (units.length === 1 ? units[0] : '');
	if (!units.includes(unit))
		throw new LedgerRefusal('wrong-value', `The ${kind} is measured in ${units.join(' or ')}.`);
	for (const value of values)
		if (!within(value))
			throw new LedgerRefusal('wrong-value', `The ${kind} is a number from 0 to ${most} ${unit}.`);
	const resolution = input.resolution ?? null;
	if (resolution !== null && !(resolution > 0 && resolution <= most))
		throw new LedgerRefusal('wrong-value', `The resolution for the ${kind} is more than 0 ${unit}.`);
	const wearLimit = input.wearLimit ?? null;
	if (wearLimit === null) return { unit, resolution, values, wearLimit, limitIs: null };
	if (!within(wearLimit))
		throw new LedgerRefusal('wrong-value', `The limit of the ${kind} is a number from 0 to ${most} ${unit}.`);
	if (input.limitIs !== 'lowest' && input.limitIs !== 'highest')
		throw new LedgerRefusal(
			'wrong-value',
			`Say whether the limit of the ${kind} is the lowest or the highest.`
		);
	return { unit, resolution, values, wearLimit, limitIs: input.limitIs };
}

/** The same place twice in one inspection would be two points at one distance. */
function refuseTwice(findings: readonly Finding[]): void {
	const seen = new Set<string>();
	for (const { kind, place } of findings) {
		const key = `${kind} ${place.toLowerCase()}`;
		if (seen.has(key))
			throw new LedgerRefusal(
				'wrong-value',
				`The ${kind}${place ? ` (${place})` : ''} stands twice; write repeats into one line, or say which place is meant.`
			);
		seen.add(key);
	}
}
