import type { Actor } from '../actor';
import { backupReminderDays } from '../backup/lastBackup';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { MEGABYTE, uploadLimitBytes } from '../store/uploadLimit';
import { readSetting, writeSetting } from './storedSetting';

export interface Settings {
	workshopName: string;
	/** IANA name, e.g. "Europe/Lisbon" */
	timeZone: string;
	/** the largest file that is taken, 1 to 2000 MB */
	uploadLimitMegabytes: number;
	/** after so many days without a backup pages remind of one, 1 to 365 */
	backupReminderDays: number;
}

/** What the workshop set; the zone is the machine's until someone chooses one. */
export function getSettings(ledger: Ledger): Settings {
	return {
		workshopName: readSetting(ledger, 'workshopName') ?? 'Our workshop',
		timeZone: readSetting(ledger, 'timeZone') ?? machineZone(),
		uploadLimitMegabytes: uploadLimitBytes(ledger) / MEGABYTE,
		backupReminderDays: backupReminderDays(ledger)
	};
}

let zoneOfMachine: string | null = null;

/** asked once: every page needs it, and to make a date format for it takes a hundred times as long as all other settings */
function machineZone(): string {
	return (zoneOfMachine ??= Intl.DateTimeFormat().resolvedOptions().timeZone);
}

/**
 * Changes what is named, leaves the rest.
 *
 * @throws LedgerRefusal wrong-value for an empty name or a zone that is not an IANA name
 */
export function setSettings(ledger: Ledger, actor: Actor, settings: Partial<Settings>): void {
	const changes: Partial<Settings> = {};
	if (settings.workshopName !== undefined)
		changes.workshopName = checkText("The workshop's name", settings.workshopName, { min: 1, max: 120 });
	if (settings.timeZone !== undefined) changes.timeZone = checkZone(settings.timeZone);
	if (settings.uploadLimitMegabytes !== undefined)
		changes.uploadLimitMegabytes = checkLimit(settings.uploadLimitMegabytes);
	if (settings.backupReminderDays !== undefined)
		changes.backupReminderDays = checkDays(settings.backupReminderDays);
	ledger.database
		.transaction(() => {
			const before = getSettings(ledger);
			for (const [name, value] of Object.entries(changes)) {
				writeSetting(ledger, name, String(value));
				leaveTrail(ledger, actor, 'changed', 'setting', name, {
					before: before[name as keyof Settings],
					after: value
				});
			}
		})
		.immediate();
}

function checkLimit(megabytes: number): number {
	if (!(Number.isInteger(megabytes) && megabytes >= 1 && megabytes <= 2000))
		throw new LedgerRefusal('wrong-value', 'The largest file may be 1 to 2000 MB.');
	return megabytes;
}

function checkDays(days: number): number {
	if (!(Number.isInteger(days) && days >= 1 && days <= 365))
		throw new LedgerRefusal('wrong-value', 'Pages remind of a backup after 1 to 365 days.');
	return days;
}

function checkZone(timeZone: string): string {
	try {
		return new Intl.DateTimeFormat('en', { timeZone }).resolvedOptions().timeZone;
	} catch {
		throw new LedgerRefusal('wrong-value', `"${timeZone}" is no time zone; give one like Europe/Lisbon.`);
	}
}
