import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';

/** with fewer rides a page's figures are there before anybody notices (about 0.2 s on the smallest machine) */
const RIDES_TO_WAIT_FOR = 400;

/** How many rides figures are computed from; null when they are so few that nobody would wait. */
export function manyRides(ledger: Ledger): number | null {
	const rides = ledger.database
		.prepare<[number], number>('SELECT count(*) FROM result WHERE version = ?')
		.pluck()
		.get(currentVersion(ledger))!;
	return rides >= RIDES_TO_WAIT_FOR ? rides : null;
}
