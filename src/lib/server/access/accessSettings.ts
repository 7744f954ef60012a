import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { readSetting, writeSetting } from '../settings/storedSetting';

/** What the workshop sets about coming in. */
export interface AccessSettings {
	/** failed attempts on one account before it rests, 3 to 50 */
	attemptsPerAccount: number;
	/** failed attempts from one address before it rests, 3 to 500 */
	attemptsPerAddress: number;
	/** how long failed attempts count, minutes, 1 to 1440 */
	attemptMinutes: number;
	/** after so many days a password is asked for again, 1 to 90 */
	sessionDays: number;
}

/**
 * Defaults: common practice, no source, but far below the 100 attempts in a row that NIST SP 800-63B (5.2.2)
 * allows on one account.
 */
const LIMITS: Readonly<Record<keyof AccessSettings, { least: number; most: number; unless: number }>> = {
	attemptsPerAccount: { least: 3, most: 50, unless: 10 },
	attemptsPerAddress: { least: 3, most: 500, unless: 30 },
	attemptMinutes: { least: 1, most: 1440, unless: 15 },
	sessionDays: { least: 1, most: 90, unless: 30 }
};
const NAMES = Object.keys(LIMITS) as (keyof AccessSettings)[];

export function accessSettings(ledger: Ledger): AccessSettings {
	const read = (name: keyof AccessSettings) => {
		const stored = Number(readSetting(ledger, name));
		return Number.isInteger(stored) && stored > 0 ? stored : LIMITS[name].unless;
	};
	return Object.fromEntries(NAMES.map((name) => [name, read(name)])) as unknown as AccessSettings;
}

/** @throws LedgerRefusal not-allowed for anybody but an owner; wrong-value */
export function setAccessSettings(ledger: Ledger, actor: Actor, settings: AccessSettings): void {
	if (actor.role !== 'owner')
		throw new LedgerRefusal('not-allowed', 'Only an owner sets how people come in.');
	for (const name of NAMES) {
		const { least, most } = LIMITS[name];
		const value = settings[name];
		if (!(Number.isInteger(value) && value >= least && value <= most))
			throw new LedgerRefusal('wrong-value', `${WORDS[name]}: ${least} to ${most}.`);
	}
	ledger.database
		.transaction(() => {
			const before = accessSettings(ledger);
			for (const name of NAMES) {
				if (settings[name] === before[name]) continue;
				writeSetting(ledger, name, String(settings[name]));
				leaveTrail(ledger, actor, 'changed', 'setting', name, {
					before: before[name],
					after: settings[name]
				});
			}
		})
		.immediate();
}

const WORDS: Readonly<Record<keyof AccessSettings, string>> = {
	attemptsPerAccount: 'Failed attempts on one account',
	attemptsPerAddress: 'Failed attempts from one address',
	attemptMinutes: 'Minutes that a failed attempt counts',
	sessionDays: 'Days until the password is asked for again'
};
