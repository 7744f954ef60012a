import type Database from 'better-sqlite3';
import { breathe } from './breathe';
import { PartFindings } from './verifyReport';

interface SumRow {
	rideId: number;
	version: number;
	drivenM: number;
	observedM: number;
	cells: number;
	cellsDrivenM: number;
	cellsObservedM: number;
	hoursDrivenM: number;
	hoursObservedM: number;
	stretchesM: number;
	put: number | null;
	talliesPut: number | null;
	putFound: number | null;
	talliesFound: number | null;
}

const RIDES_A_SLICE = 100;
/** sums are made in another order than the analysis made them: rounding, nothing else */
const RELATIVE = 1e-6;
const ABSOLUTE_M = 0.01;

const SUMS = `SELECT r.ride_id AS rideId, r.version, r.driven_m AS drivenM, r.observed_m AS observedM,
	(SELECT count(*) FROM exposure_cell c WHERE c.ride_id = r.ride_id AND c.version = r.version) AS cells,
	(SELECT total(driven_m) FROM exposure_cell c WHERE c.ride_id = r.ride_id AND c.version = r.version)
		AS cellsDrivenM,
	(SELECT total(observed_m) FROM exposure_cell c WHERE c.ride_id = r.ride_id AND c.version = r.version)
		AS cellsObservedM,
	(SELECT total(driven_m) FROM exposure_hour h WHERE h.ride_id = r.ride_id AND h.version = r.version)
		AS hoursDrivenM,
	(SELECT total(observed_m) FROM exposure_hour h WHERE h.ride_id = r.ride_id AND h.version = r.version)
		AS hoursObservedM,
	(SELECT total(end_m - start_m) FROM observed_stretch o WHERE o.ride_id = r.ride_id
		AND o.version = r.version) AS stretchesM,
	i.put, (SELECT total(put) FROM insertion_tally t WHERE t.ride_id = r.ride_id AND t.version = r.version)
		AS talliesPut,
	i.found AS putFound,
	(SELECT total(found) FROM insertion_tally t WHERE t.ride_id = r.ride_id AND t.version = r.version)
		AS talliesFound
	FROM result r LEFT JOIN insertion_test i ON i.ride_id = r.ride_id AND i.version = r.version
	WHERE r.ride_id IN (SELECT id FROM ride WHERE id > ? ORDER BY id LIMIT ${RIDES_A_SLICE})
	ORDER BY r.ride_id, r.version`;

/**
 * Adds up again what statistics read: of every result its cells and hours of exposure, its observed stretches,
 * and the slips that were put in. Each must give what stands in the result. Read in slices of rides.
 */
export async function checkSums(database: Database.Database): Promise<PartFindings> {
	const found = new PartFindings();
	const slice = database.prepare<[number], SumRow>(SUMS);
	const next = database
		.prepare<[number], number | null>(
			`SELECT max(id) FROM (SELECT id FROM ride WHERE id > ? ORDER BY id LIMIT ${RIDES_A_SLICE})`
		)
		.pluck();
	for (let after: number | null = -1; after !== null;) {
		const startedMs = performance.now();
		for (const row of slice.all(after)) checkOne(row, found);
		after = next.get(after) ?? null;
		await breathe(startedMs);
	}
	looseVerdicts(database, found);
	return found;
}

function checkOne(row: SumRow, found: PartFindings): void {
	found.checked++;
	const subject = `ride ${row.rideId}, version ${row.version}`;
	if (row.cells === 0 && row.drivenM > 0) {
		found.note(subject, 'Its exposure was never written down (an early layout); nothing can be added up.');
		return;
	}
	const sums: [what: string, sum: number, stored: number][] = [
		['the driven metres of its torque cells', row.cellsDrivenM, row.drivenM],
		['the observed metres of its torque cells', row.cellsObservedM, row.observedM],
		['the driven metres of its hours', row.hoursDrivenM, row.drivenM],
		['the observed metres of its hours', row.hoursObservedM, row.observedM],
		['its observed stretches', row.stretchesM, row.observedM],
		['the slips put into it', row.talliesPut ?? 0, row.put ?? 0],
		['the slips found again in it', row.talliesFound ?? 0, row.putFound ?? 0]
	];
	for (const [what, sum, stored] of sums)
		if (!(Math.abs(sum - stored) <= ABSOLUTE_M + RELATIVE * Math.abs(stored)))
			found.damage(subject, `${what} add up to ${sum.toFixed(2)} instead of ${stored.toFixed(2)}.`);
}

function looseVerdicts(database: Database.Database, found: PartFindings): void {
	const rows = database
		.prepare<[], { rideId: number; version: number }>(
			`SELECT e.ride_id AS rideId, e.version FROM slip_event e JOIN verdict v ON v.id = e.verdict_id
			WHERE v.ride_id <> e.ride_id OR v.superseded_ms IS NOT NULL`
		)
		.all();
	for (const { rideId, version } of rows)
		found.damage(
			`ride ${rideId}, version ${version}`,
			'An event carries a verdict that was taken back or belongs to another ride.'
		);
}
