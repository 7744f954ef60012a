import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';

/** What an entry of the trail is about. */
export interface TrailThing {
	/** "Wheel A", a file's name ...; null when the row is not there any more */
	name: string | null;
	/** of a ride: when it began */
	startedAt: Instant | null;
	/** the page that shows it; null when none does */
	href: string | null;
}

interface Source {
	/** name, and where it is shown: one row for an id */
	readonly sql: string;
	readonly href: (id: string, page: number | null) => string | null;
}

/** subject -> how to find what it names; `page` is the id of the row whose page shows it */
const SOURCES: Readonly<Record<string, Source>> = {
	ride: {
		sql: 'SELECT file_name AS name, started_ms AS startedMs, id AS page FROM ride WHERE id = ?',
		href: (id) => `/rides/${id}`
	},
	lap: {
		sql: 'SELECT file_name AS name, started_ms AS startedMs, id AS page FROM ride WHERE id = ?',
		href: (id) => `/rides/${id}#laps`
	},
	event: {
		sql: `SELECT r.file_name AS name, r.started_ms AS startedMs, r.id AS page FROM slip_event e
			JOIN ride r ON r.id = e.ride_id WHERE e.id = ?`,
		href: (id, page) => `/rides/${page}?event=${id}`
	},
	'felt slip': {
		sql: `SELECT r.file_name AS name, r.started_ms AS startedMs, r.id AS page FROM felt_slip f
			JOIN ride r ON r.id = f.ride_id WHERE f.id = ?`,
		href: (_id, page) => `/rides/${page}#felt`
	},
	review: {
		sql: `SELECT r.file_name AS name, r.started_ms AS startedMs, r.id AS page FROM review_item i
			JOIN ride r ON r.id = i.ride_id WHERE i.id = ?`,
		href: (_id, page) => `/rides/${page}`
	},
	wheel: { sql: named('wheel'), href: (id) => `/wheels/${id}` },
	build: { sql: named('build'), href: (id) => `/builds/${id}` },
	part: {
		sql: "SELECT name || ' ' || number AS name, NULL AS startedMs, id AS page FROM part WHERE id = ?",
		href: (id) => `/parts/${id}`
	},
	bike: { sql: named('bike'), href: (id) => `/bikes/${id}` },
	person: {
		sql: 'SELECT code AS name, NULL AS startedMs, id AS page FROM person WHERE id = ?',
		href: () => null
	},
	'fitted period': {
		sql: `SELECT b.name || ' on ' || w.name AS name, NULL AS startedMs, w.id AS page FROM fitted_period p
			JOIN build b ON b.id = p.build_id JOIN wheel w ON w.id = p.wheel_id WHERE p.id = ?`,
		href: (_id, page) => `/wheels/${page}`
	},
	'wheel on a bike': {
		sql: `SELECT w.name || ' on ' || b.name AS name, NULL AS startedMs, w.id AS page FROM wheel_on_bike o
			JOIN bike b ON b.id = o.bike_id JOIN wheel w ON w.id = o.wheel_id WHERE o.id = ?`,
		href: (_id, page) => `/wheels/${page}`
	},
	service: { sql: ofWheel('service'), href: (_id, page) => `/wheels/${page}` },
	'unlogged distance': { sql: ofWheel('unlogged_distance'), href: (_id, page) => `/wheels/${page}` },
	'odometer reading': { sql: ofWheel('odometer_reading'), href: (_id, page) => `/wheels/${page}` },
	inspection: { sql: ofWheel('inspection'), href: (id, page) => `/wheels/${page}/inspections/${id}` },
	incident: { sql: ofWheel('incident'), href: (id, page) => `/wheels/${page}/incidents/${id}` },
	'hub stack': { sql: ofBuild('hub_stack'), href: (_id, page) => `/builds/${page}/stack` },
	'release criteria': { sql: ofBuild('release_criteria'), href: (_id, page) => `/builds/${page}/release` },
	'release decision': { sql: ofBuild('release_decision'), href: (_id, page) => `/builds/${page}/release` },
	'analysis version': { sql: 'SELECT ? AS name, NULL AS startedMs, NULL AS page', href: () => '/versions' },
	setting: { sql: 'SELECT ? AS name, NULL AS startedMs, NULL AS page', href: () => '/settings' },
	answers: { sql: 'SELECT NULL AS name, NULL AS startedMs, ? AS page', href: () => '/answers' }
};

function named(table: string): string {
	return `SELECT name, NULL AS startedMs, id AS page FROM ${table} WHERE id = ?`;
}

function ofWheel(table: string): string {
	return `SELECT 'on ' || w.name AS name, NULL AS startedMs, w.id AS page FROM ${table} x
		JOIN wheel w ON w.id = x.wheel_id WHERE x.id = ?`;
}

function ofBuild(table: string): string {
	return `SELECT 'of ' || b.name AS name, NULL AS startedMs, b.id AS page FROM ${table} x
		JOIN build b ON b.id = x.build_id WHERE x.id = ?`;
}

/** Finds what an entry is about; each thing is looked up once. */
export function trailThings(ledger: Ledger): (subject: string, id: string) => TrailThing {
	const known = new Map<string, TrailThing>();
	return (subject, id) => {
		const key = `${subject} ${id}`;
		if (!known.has(key)) known.set(key, lookUp(ledger, subject, id));
		return known.get(key)!;
	};
}

function lookUp(ledger: Ledger, subject: string, id: string): TrailThing {
	const source = Object.hasOwn(SOURCES, subject) ? SOURCES[subject] : null;
	const row =
		source &&
		ledger.database
			.prepare<[string], { name: string | null; startedMs: number | null; page: number | null }>(source.sql)
			.get(id);
	if (!source || !row) return { name: null, startedAt: null, href: null };
	return {
		name: row.name,
		startedAt: row.startedMs === null ? null : toInstant(row.startedMs),
		href: source.href(id, row.page)
	};
}
