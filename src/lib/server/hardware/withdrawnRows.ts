import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';

/** Something that was withdrawn and can be put back. */
export interface WithdrawnView {
	table: WithdrawnTable;
	id: number;
	/** what it is, short: "opened, cleaned", a build's name; '' = its time says enough */
	what: string;
	/** when it lies or begins; null = it has no time */
	at: Instant | null;
	/** null = it has no end, or none was written down */
	until: Instant | null;
	/** it has an end when one is written down */
	lasts: boolean;
	distanceM: number | null;
	reason: string;
	withdrawnAt: Instant;
	/** code of who withdrew it; null = the trail does not say */
	by: string | null;
}

const NOTHING = 'NULL AS untilMs, 0 AS lasts, NULL AS distanceM';
const DONE = `rtrim(iif(x.opened, 'opened, ', '') || iif(x.cleaned, 'cleaned, ', '')
	|| iif(x.lubricant = '', '', x.lubricant || ', ') || iif(x.parts_turned = '', '', x.parts_turned || ', '), ', ')`;

/** table -> its word in the trail, what is told of it, and what it belongs to */
const TABLES = {
	service: { word: 'service', columns: `${DONE} AS what, x.at_ms AS atMs, ${NOTHING}`, of: 'x.wheel_id' },
	odometer_reading: {
		word: 'odometer reading',
		columns: 'x.note AS what, x.at_ms AS atMs, NULL AS untilMs, 0 AS lasts, x.reading_m AS distanceM',
		of: 'x.wheel_id'
	},
	unlogged_distance: {
		word: 'unlogged distance',
		columns: 'x.note AS what, x.at_ms AS atMs, NULL AS untilMs, 0 AS lasts, x.distance_m AS distanceM',
		of: 'x.wheel_id'
	},
	wheel_on_bike: {
		word: 'wheel on a bike',
		columns: `(SELECT name FROM bike WHERE id = x.bike_id) AS what, x.from_ms AS atMs, x.until_ms AS untilMs,
			1 AS lasts, NULL AS distanceM`,
		of: 'x.wheel_id'
	},
	inspection: {
		word: 'inspection',
		columns: `(SELECT code FROM person WHERE id = x.inspected_by) AS what, x.at_ms AS atMs, ${NOTHING}`,
		of: 'x.wheel_id'
	},
	fitted_period: {
		word: 'fitted period',
		columns: `(SELECT name FROM build WHERE id = x.build_id) AS what, x.from_ms AS atMs,
			x.until_ms AS untilMs, 1 AS lasts, NULL AS distanceM`,
		of: 'x.wheel_id'
	},
	hub_stack: {
		word: 'hub stack',
		columns: `x.variant AS what, NULL AS atMs, ${NOTHING}`,
		of: 'x.build_id'
	}
} as const;
export type WithdrawnTable = keyof typeof TABLES;

type Row = Omit<WithdrawnView, 'table' | 'at' | 'until' | 'lasts' | 'withdrawnAt'> & {
	atMs: number | null;
	untilMs: number | null;
	lasts: number;
	withdrawnMs: number;
};

/**
 * What of a kind was withdrawn, the last first.
 *
 * @param ownerId the wheel it belongs to; of a stack the build
 */
export function withdrawnRows(ledger: Ledger, table: WithdrawnTable, ownerId: number): WithdrawnView[] {
	return read(ledger, table, TABLES[table].of, ownerId);
}

/** The fitted periods of a build that were withdrawn, the last first; what they tell is the wheel. */
export function withdrawnPeriodsOfBuild(ledger: Ledger, buildId: number): WithdrawnView[] {
	const wheels = ledger.database.prepare<[number], { name: string }>(
		'SELECT w.name FROM fitted_period p JOIN wheel w ON w.id = p.wheel_id WHERE p.id = ?'
	);
	return read(ledger, 'fitted_period', 'x.build_id', buildId).map((row) => ({
		...row,
		what: wheels.get(row.id)!.name
	}));
}

function read(ledger: Ledger, table: WithdrawnTable, of: string, ownerId: number): WithdrawnView[] {
	const { word, columns } = TABLES[table];
	return ledger.database
		.prepare<[string, number], Row>(
			`SELECT x.id, ${columns}, x.withdrawn_reason AS reason, x.withdrawn_ms AS withdrawnMs,
				(SELECT p.code FROM trail t JOIN person p ON p.id = t.actor_id WHERE t.subject = ?
					AND t.subject_id = CAST(x.id AS TEXT) AND t.action = 'withdrew' ORDER BY t.id DESC LIMIT 1) AS by
			FROM ${table} x WHERE ${of} = ? AND x.withdrawn_ms IS NOT NULL ORDER BY x.withdrawn_ms DESC, x.id DESC`
		)
		.all(word, ownerId)
		.map(({ atMs, untilMs, lasts, withdrawnMs, ...row }) => ({
			...row,
			table,
			at: atMs === null ? null : toInstant(atMs),
			until: untilMs === null ? null : toInstant(untilMs),
			lasts: lasts === 1,
			withdrawnAt: toInstant(withdrawnMs)
		}));
}
