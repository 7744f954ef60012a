import { LedgerRefusal } from '../refusal';

/**
 * Shortest password, characters. NIST SP 800-63B asks for at least 8 of what a person chooses; 12 is common
 * practice where nothing else is asked for.
 */
export const SHORTEST_PASSWORD = 12;
const LONGEST_PASSWORD = 200;
const FEWEST_DIFFERENT = 5;

/**
 * What every new password has to keep. No rule on kinds of characters: they make passwords that are written on
 * the bench.
 *
 * @throws LedgerRefusal wrong-value
 */
export function refuseWeakPassword(password: string, personName: string): void {
	const length = [...password].length;
	if (length < SHORTEST_PASSWORD)
		throw new LedgerRefusal(
			'wrong-value',
			`A password has at least ${SHORTEST_PASSWORD} characters; a few words in a row are good.`
		);
	if (length > LONGEST_PASSWORD)
		throw new LedgerRefusal('wrong-value', `A password has at most ${LONGEST_PASSWORD} characters.`);
	if (new Set(password.toLowerCase()).size < FEWEST_DIFFERENT)
		throw new LedgerRefusal('wrong-value', 'This password repeats itself and is guessed at once.');
	const plain = password.toLowerCase().replace(/\s+/g, '');
	if (plain === personName.toLowerCase().replace(/\s+/g, '') || plain.replace(/\d+$/, '') === 'slipledger')
		throw new LedgerRefusal('wrong-value', 'This password is a name and is guessed at once.');
}
