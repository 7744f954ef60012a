import { LedgerRefusal, QUESTION_NAMES, type GivenAnswer, type QuestionName } from '$lib/server';
import { text } from '../forms';

const KEY = /^(\d{1,15})(?:@(\d{1,9}(?:\.\d{1,9})?))?$/;

/** What the form asks about. */
export function questionOf(form: FormData): QuestionName {
	const said = text(form, 'question');
	const question = QUESTION_NAMES.find((known) => known === said);
	if (!question) throw new LedgerRefusal('wrong-value', 'Say which question is answered.');
	return question;
}

/**
 * The ticked rows with their answers: one for all of them when it was chosen, else each row's own. A ticked
 * row without an answer is a mistake, not a "no".
 */
export function givenAnswers(form: FormData): GivenAnswer[] {
	const forAll = text(form, 'for-all');
	return form.getAll('row').map((key): GivenAnswer => {
		const [, rideId, lapS] = KEY.exec(String(key)) ?? [];
		if (!rideId) throw new LedgerRefusal('wrong-value', 'One of the rows is no ride.');
		const value = forAll || text(form, `answer-${String(key)}`);
		if (value === '')
			throw new LedgerRefusal(
				'wrong-value',
				'One of the ticked rides has no answer yet; nothing was changed.'
			);
		return { rideId: Number(rideId), value, ...(lapS !== undefined && { lapS: Number(lapS) }) };
	});
}
