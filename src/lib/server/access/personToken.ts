import { randomBytes } from 'node:crypto';
import type { Ledger } from '../ledger/openLedger';
import { findActivePerson } from '../people/people';
import { readSetting, writeSetting } from '../settings/storedSetting';
import type { PersonView } from '../views';

/** name of the cookie that keeps who sits at this browser */
export const PERSON_COOKIE = 'person';

/**
 * What the cookie keeps: the person, and of which ledger. Cookies do not tell ports apart, and person 1 of
 * one ledger is someone else in the next. It is no secret: on loopback everybody may choose any name.
 */
export function personToken(ledger: Ledger, person: PersonView): string {
	return `${ledgerMark(ledger)}-${person.id}`;
}

/** The person that a cookie stands for; null when it is not of this ledger or of nobody. */
export function personOfToken(ledger: Ledger, token: string | undefined): PersonView | null {
	const [mark, id] = (token ?? '').split('-');
	if (!id || !/^\d{1,15}$/.test(id) || mark !== ledgerMark(ledger)) return null;
	return findActivePerson(ledger, Number(id));
}

function ledgerMark(ledger: Ledger): string {
	const known = readSetting(ledger, 'ledgerMark');
	if (known) return known;
	ledger.database
		.transaction(() => {
			if (readSetting(ledger, 'ledgerMark') === null)
				writeSetting(ledger, 'ledgerMark', randomBytes(6).toString('hex'));
		})
		.immediate();
	return readSetting(ledger, 'ledgerMark') ?? '';
}
