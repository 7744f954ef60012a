import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';

/** with fewer rides a page's figures are there before anybody notices (about 0.2 s on the smallest machine) */
const RIDES_TO_WAIT_FOR = 400;

/** Whether figures are computed from so many rides that somebody would wait. Asked with every page: it counts no further. */
export function areManyRides(ledger: Ledger): boolean {
	const rides = ledger.database
		.prepare<[number], number>(
			`SELECT count(*) FROM (SELECT 1 FROM result WHERE version = ? LIMIT ${RIDES_TO_WAIT_FOR})`
		)
		.pluck()
		.get(currentVersion(ledger))!;
	return rides === RIDES_TO_WAIT_FOR;
}

/** How many rides figures are computed from. */
export function countRides(ledger: Ledger): number {
	return ledger.database
		.prepare<[number], number>('SELECT count(*) FROM result WHERE version = ?')
		.pluck()
		.get(currentVersion(ledger))!;
}
