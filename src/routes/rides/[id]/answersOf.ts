import { LedgerRefusal, REJECT_REASONS, type RejectReason, type RideAnswers } from '$lib/server';
import { rowId, text } from '../../forms';

/**
 * The corrections of a ride as its form sends them. Only what was changed is an answer: what the tool found
 * by itself (build by wheel and time) must stay free to follow later corrections. An empty choice takes a
 * hand-made answer back.
 */
export function answersOf(form: FormData): RideAnswers {
	const changed = (name: string) => form.has(name) && text(form, name) !== text(form, `was-${name}`);
	const answers: RideAnswers = {};
	if (changed('wheel')) answers.wheelId = rowId(form, 'wheel');
	if (changed('build')) answers.buildId = rowId(form, 'build');
	if (changed('rider')) answers.riderId = rowId(form, 'rider');
	if (changed('trainer')) answers.trainer = yesNo(text(form, 'trainer'));
	if (changed('wet')) answers.wet = yesNo(text(form, 'wet'));
	return answers;
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
