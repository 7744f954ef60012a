import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeWhole } from '../backup/writeWhole';
import type { VerifyReport } from './verifyReport';

const FILE = 'last-verify.json';

/** The last report of `verify` on a data folder; null when there is none that can be read. */
export function lastVerify(dataFolder: string): VerifyReport | null {
	try {
		const report = JSON.parse(readFileSync(join(dataFolder, FILE), 'utf8')) as VerifyReport;
		return typeof report.checkedAt === 'string' && Array.isArray(report.parts) ? report : null;
	} catch {
		return null;
	}
}

/**
 * Keeps a report beside the ledger, not in it: it must also be kept when the ledger is what is damaged.
 *
 * @returns false where the folder cannot be written to
 */
export function keepVerify(dataFolder: string, report: VerifyReport): boolean {
	try {
		writeWhole(join(dataFolder, FILE), `${JSON.stringify(report, null, '\t')}\n`);
		return true;
	} catch {
		return false;
	}
}
