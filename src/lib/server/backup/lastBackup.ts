import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { readSetting } from '../settings/storedSetting';
import type { Instant } from '../views';

export interface BackupState {
	/** null = never as far as this ledger knows */
	lastAt: Instant | null;
	/** where it lies */
	folder: string | null;
	/** the setting */
	remindAfterDays: number;
	/** true when there is something to lose and the last backup is older than that, or there is none */
	due: boolean;
}

export const DEFAULT_BACKUP_REMINDER_DAYS = 7;
const DAY_MS = 24 * 3600 * 1000;

/** After how many days without a backup pages remind of one. */
export function backupReminderDays(ledger: Ledger): number {
	const stored = Number(readSetting(ledger, 'backupReminderDays'));
	return Number.isInteger(stored) && stored > 0 ? stored : DEFAULT_BACKUP_REMINDER_DAYS;
}

/** When the last backup was made, by the trail, and whether the next one is due. */
export function backupState(ledger: Ledger): BackupState {
	const last = ledger.database
		.prepare<[], { atMs: number; folder: string | null }>(
			`SELECT at_ms AS atMs, json_extract(detail, '$.folder') AS folder FROM trail
			WHERE subject = 'ledger' AND subject_id = 'backup' AND action = 'backed up'
			ORDER BY id DESC LIMIT 1`
		)
		.get();
	const remindAfterDays = backupReminderDays(ledger);
	const toLose =
		ledger.database.prepare('SELECT 1 FROM import WHERE example = 0 LIMIT 1').get() !== undefined;
	// a clock that was set back must not silence the reminder for years
	const daysSince = last ? Math.abs(ledger.now() - last.atMs) / DAY_MS : Infinity;
	return {
		lastAt: last ? toInstant(last.atMs) : null,
		folder: last?.folder ?? null,
		remindAfterDays,
		due: toLose && daysSince > remindAfterDays
	};
}
