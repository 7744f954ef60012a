import {
	LedgerRefusal,
	REJECT_REASONS,
	type AnswerName,
	type RejectReason,
	type RideAnswers,
	type Surface
} from '$lib/server';
import { decimal, rowId, text } from '../../forms';

/**
 * The corrections of a ride as its form sends them, and what the page showed of each. Only what was changed is
 * an answer: what the tool found by itself (build by wheel and time) must stay free to follow later
 * corrections. An empty choice takes a hand-made answer back.
 */
export function answersOf(form: FormData): { answers: RideAnswers; seen: RideAnswers } {
	const answers: RideAnswers = {};
	const seen: RideAnswers = {};
	for (const [name, field] of Object.entries(FIELDS) as [AnswerName, string][]) {
		if (!form.has(field) || text(form, field) === text(form, `was-${field}`)) continue;
		Object.assign(answers, { [name]: readField(form, name, field) });
		if (form.has(`was-${field}`)) Object.assign(seen, { [name]: readField(form, name, `was-${field}`) });
	}
	return { answers, seen };
}

const FIELDS: Partial<Record<AnswerName, string>> = {
	wheelId: 'wheel',
	buildId: 'build',
	riderId: 'rider',
	bikeId: 'bike',
	surface: 'surface',
	loadKg: 'load',
	trainer: 'trainer',
	motor: 'motor',
	wet: 'wet'
};

function readField(form: FormData, name: AnswerName, field: string): RideAnswers[AnswerName] {
	switch (name) {
		case 'surface':
			return (text(form, field) || null) as Surface | null;
		case 'loadKg':
			return decimal(form, field);
		case 'trainer':
		case 'motor':
		case 'wet':
			return yesNo(text(form, field));
		default:
			return rowId(form, field);
	}
}

/** Why an event is no slip; an event cannot be rejected without saying why. */
export function reasonOf(form: FormData): RejectReason {
	const said = text(form, 'reason');
	const reason = REJECT_REASONS.find((known) => known === said);
	if (!reason) throw new LedgerRefusal('wrong-value', 'Say why it is no slip before you reject it.');
	return reason;
}

/** The verdict that the page showed when the person decided; null = none stood. */
export function seenVerdict(form: FormData): { verdictId: number | null } {
	return { verdictId: rowId(form, 'seen') };
}

/** Whether a look-alike is the same recording; anything but the two answers is none. */
export function twinDecisionOf(form: FormData): 'same recording' | 'different ride' {
	const said = text(form, 'decision');
	if (said === 'same recording' || said === 'different ride') return said;
	throw new LedgerRefusal('wrong-value', 'Say whether it is the same recording or a different ride.');
}

function yesNo(value: string): boolean | null {
	return value === 'yes' ? true : value === 'no' ? false : null;
}
