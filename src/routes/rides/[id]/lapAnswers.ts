import { LedgerRefusal, MARK_ANSWERS, type MarkAnswer } from '$lib/server';
import { decimal, text } from '../../forms';

/** The rider's word on what laps mean: yes, no, or not said (null). */
export function lapMeaningOf(form: FormData): boolean | null {
	const said = text(form, 'meaning');
	return said === 'yes' ? true : said === 'no' ? false : null;
}

/** Which lap is answered, and how; an empty answer takes an earlier one back. */
export function lapAnswerOf(form: FormData): { timeS: number; answer: MarkAnswer | null } {
	const timeS = decimal(form, 'lap');
	if (timeS === null || Number.isNaN(timeS))
		throw new LedgerRefusal('wrong-value', 'Say which lap is meant.');
	const said = text(form, 'answer');
	const answer = MARK_ANSWERS.find((known) => known === said) ?? null;
	if (said !== '' && answer === null)
		throw new LedgerRefusal('wrong-value', 'Say "a slip was felt" or "something else".');
	return { timeS, answer };
}
