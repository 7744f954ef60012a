import { checkNeededNumber, checkNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import { fromInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { findPerson } from '../people/people';
import { LedgerRefusal } from '../refusal';
import type { BillLine, BuildContents, TorqueLine } from './buildContents';
import { checkBuildInput, type BuildInput } from './builds';
import { findPart } from './partRecords';
import { refuseFuture } from './periodRows';

/** A build as a form or the example hands it in; what is missing is empty. */
export interface BuildContentsInput extends BuildInput {
	builtBy?: number | null;
	/** an instant with its zone */
	builtAt?: string | null;
	preload?: string;
	endFloatMm?: number | null;
	notes?: string;
	bill?: readonly { partId: number; quantity: number | null; serial?: string; note?: string }[];
	torques?: readonly {
		joint: string;
		wantedNm?: number | null;
		recordedNm?: number | null;
		tool?: string;
	}[];
}

const TORQUE = { min: 0.1, max: 300, unit: 'Nm' };
const MOST_LINES = 100;

/**
 * A build's contents, cleaned and within reason. Who tightened a joint is filled in by the caller, who
 * knows what was written down before.
 *
 * @throws LedgerRefusal wrong-value, naming the line; not-found for an unknown part or person
 */
export function checkBuildContents(
	ledger: Ledger,
	input: BuildContentsInput,
	options: { example?: boolean } = {}
): BuildContents {
	const bill = (input.bill ?? []).map((line, i) => checkLine(ledger, line, i + 1));
	const torques = (input.torques ?? []).map((line) => checkTorque(line));
	if (bill.length > MOST_LINES || torques.length > MOST_LINES)
		throw new LedgerRefusal(
			'wrong-value',
			`A build has at most ${MOST_LINES} lines of parts and of torques.`
		);
	refuseTwice(
		torques.map(({ joint }) => joint),
		(joint) => `The joint "${joint}" stands there twice.`
	);
	refuseTwice(
		bill
			.filter(({ serial }) => serial !== '')
			.map(({ partId, serial }) => `${findPart(ledger, partId).number} with serial ${serial}`),
		(piece) => `${piece} stands in the bill twice: one piece is in a hub once.`
	);
	const builtMs = input.builtAt ? fromInstant(input.builtAt) : null;
	if (!options.example) refuseFuture(ledger, builtMs);
	const builtBy = input.builtBy ?? null;
	if (builtBy !== null && !findPerson(ledger, builtBy))
		throw new LedgerRefusal('not-found', 'Nobody is known under the name that was chosen as the builder.');
	return {
		...checkBuildInput(input),
		builtBy,
		builtMs,
		preload: checkText('The preload', input.preload, { min: 0, max: 200 }),
		endFloatMm: checkNumber('The end float', input.endFloatMm, { min: 0, max: 5, unit: 'mm' }),
		notes: checkText('The notes', input.notes, { min: 0, max: 4000 }),
		bill,
		torques
	};
}

function checkLine(
	ledger: Ledger,
	line: NonNullable<BuildContentsInput['bill']>[number],
	number: number
): BillLine {
	const { kind, name } = findPart(ledger, line.partId);
	const grams = kind === 'lubricant';
	const where = `line ${number} (${name})`;
	const quantity = checkNeededNumber(`The quantity in ${where}`, line.quantity, {
		min: grams ? 0.01 : 1,
		max: 1000,
		unit: grams ? 'g' : 'pieces',
		whole: !grams
	});
	const serial = checkText(`The serial in ${where}`, line.serial, { min: 0, max: 60 });
	if (serial !== '' && quantity !== 1)
		throw new LedgerRefusal(
			'wrong-value',
			`In ${where} one serial stands for ${quantity} ${grams ? 'g' : 'pieces'}: give each piece that bears one a line of its own.`
		);
	return {
		partId: line.partId,
		quantity,
		serial,
		note: checkText(`The note in ${where}`, line.note, { min: 0, max: 500 })
	};
}

function checkTorque(line: NonNullable<BuildContentsInput['torques']>[number]): TorqueLine {
	const joint = checkText('The name of a joint', line.joint, { min: 1, max: 120 });
	return {
		joint,
		wantedNm: checkNumber(`The torque wanted at "${joint}"`, line.wantedNm, TORQUE),
		recordedNm: checkNumber(`The torque recorded at "${joint}"`, line.recordedNm, TORQUE),
		tool: checkText(`The tool used at "${joint}"`, line.tool, { min: 0, max: 120 }),
		personId: null,
		atMs: null
	};
}

function refuseTwice(values: readonly string[], sentence: (value: string) => string): void {
	const seen = new Set<string>();
	for (const value of values) {
		if (seen.has(value.toLowerCase())) throw new LedgerRefusal('wrong-value', sentence(value));
		seen.add(value.toLowerCase());
	}
}
