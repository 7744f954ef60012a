import type Database from 'better-sqlite3';
import { createHash } from 'node:crypto';
import { PartFindings } from './verifyReport';

/** The hash of every signed record, taken anew. */
export function checkDecisions(database: Database.Database): PartFindings {
	const found = new PartFindings();
	const rows = database
		.prepare<[], { id: number; record: string; recordSha256: string }>(
			'SELECT id, record, record_sha256 AS recordSha256 FROM release_decision ORDER BY id'
		)
		.iterate();
	for (const { id, record, recordSha256 } of rows) {
		found.checked++;
		if (createHash('sha256').update(record).digest('hex') !== recordSha256)
			found.damage(`decision ${id}`, 'Its record does not have the hash that was signed.');
	}
	return found;
}
