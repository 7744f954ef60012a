import { LedgerRefusal } from '../refusal';

/**
 * A text that a person typed, with outer and repeated white space and control characters taken out.
 *
 * @param what the word for it in a refusal: "The name"
 * @param limits length in characters after cleaning
 * @throws LedgerRefusal wrong-value when it is too short or too long
 */
export function checkText(what: string, text: unknown, limits: { min: number; max: number }): string {
	const cleaned = String(text ?? '')
		.normalize('NFC')
		// eslint-disable-next-line no-control-regex
		.replace(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]+/g, ' ')
		.replace(/\s+/g, ' ')
		.trim();
	if (cleaned.length < limits.min) throw new LedgerRefusal('wrong-value', `${what} is missing or too short.`);
	if (cleaned.length > limits.max)
		throw new LedgerRefusal('wrong-value', `${what} is longer than ${limits.max} characters.`);
	return cleaned;
}
