import type { ColumnMapping } from '$lib/ride/columnMapping';
import type { TableHead } from '$lib/ride/tableHead';
import type { Ledger } from '../ledger/openLedger';
import { headOfSource } from './headOfSource';
import { sourceColumns } from './sourceColumns';

export interface RideColumns {
	rideId: number;
	sha256: string;
	fileName: string;
	head: TableHead;
	/** by which it was read */
	mapping: ColumnMapping;
}

interface Row {
	rideId: number;
	sha256: string;
	fileName: string;
}

/** By which columns the table of a ride was read; null for files that need none, and where the file is gone. */
export function rideColumns(ledger: Ledger, rideId: number): RideColumns | null {
	const { database, folder } = ledger;
	const row = database
		.prepare<[number], Row>(`SELECT id AS rideId, sha256, file_name AS fileName FROM ride WHERE id = ?`)
		.get(rideId);
	const mapping = row && sourceColumns(database, row.sha256);
	const head = mapping && headOfSource(folder, row.sha256);
	if (!mapping || !head) return null;
	return { ...row, head, mapping };
}

/** Other rides with the same header whose files stand and were read by the same answer. */
export function ridesReadAlike(ledger: Ledger, { rideId, head, mapping }: RideColumns): number[] {
	return ledger.database
		.prepare<[string], { rideId: number; sha256: string }>(
			`SELECT r.id AS rideId, r.sha256 FROM ride r JOIN source_columns c ON c.sha256 = r.sha256
			WHERE c.mapping = ? AND r.sha256 NOT IN (SELECT sha256 FROM erased_source) ORDER BY r.id`
		)
		.all(JSON.stringify(mapping))
		.filter((one) => one.rideId !== rideId && headOfSource(ledger.folder, one.sha256)?.key === head.key)
		.map((one) => one.rideId);
}
