import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';
import { trailThings, type TrailThing } from './trailThing';
import { trailValues } from './trailValue';
import { trailWord } from './trailWords';

/** One entry: who did what to which thing, and what it was before. */
export interface TrailEntry {
	id: number;
	at: Instant;
	/** code of the person */
	by: string;
	action: string;
	subject: string;
	subjectId: string;
	thing: TrailThing;
	changes: { what: string; before: string; after: string }[];
	/** further facts, in words */
	facts: { what: string; value: string }[];
}

export interface TrailQuery {
	/** from 1 */
	page: number;
	pageSize: number;
	subject?: string;
	subjectId?: string;
	actorId?: number;
}

export interface TrailView {
	entries: TrailEntry[];
	total: number;
	/** what the trail tells about, for the filter */
	subjects: string[];
	people: { id: number; code: string }[];
}

interface StoredEntry {
	id: number;
	atMs: number;
	by: string;
	action: string;
	subject: string;
	subjectId: string;
	detail: string;
}

const FILTER = `(@subject IS NULL OR t.subject = @subject) AND (@subjectId IS NULL OR t.subject_id = @subjectId)
	AND (@actorId IS NULL OR t.actor_id = @actorId)`;

/** One page of the trail, the newest first. */
export function listTrail(ledger: Ledger, query: TrailQuery): TrailView {
	const { database } = ledger;
	const pageSize = Math.max(1, Math.min(200, Math.trunc(query.pageSize) || 1));
	const filter = {
		subject: query.subject ?? null,
		subjectId: query.subjectId ?? null,
		actorId: query.actorId ?? null
	};
	const { total } = database
		.prepare<[object], { total: number }>(`SELECT count(*) AS total FROM trail t WHERE ${FILTER}`)
		.get(filter)!;
	const rows = database
		.prepare<[object], StoredEntry>(
			`SELECT t.id, t.at_ms AS atMs, p.code AS by, t.action, t.subject, t.subject_id AS subjectId, t.detail
			FROM trail t JOIN person p ON p.id = t.actor_id WHERE ${FILTER}
			ORDER BY t.id DESC LIMIT @limit OFFSET @offset`
		)
		.all({
			...filter,
			limit: pageSize,
			offset: (Math.max(1, Math.trunc(query.page) || 1) - 1) * pageSize
		});
	return {
		entries: toEntries(ledger, rows),
		total,
		subjects: database
			.prepare<[], { subject: string }>('SELECT DISTINCT subject FROM trail ORDER BY subject')
			.all()
			.map(({ subject }) => subject),
		people: database
			.prepare<[], { id: number; code: string }>(
				'SELECT id, code FROM person WHERE id IN (SELECT actor_id FROM trail) ORDER BY code'
			)
			.all()
	};
}

/** what belongs to a thing: its word in the trail, and where its numbers are found (null = the thing's own number) */
const BELONGS: Readonly<Record<string, readonly (readonly [word: string, numbers: string | null])[]>> = {
	ride: [
		['lap', null],
		['event', 'slip_event WHERE ride_id'],
		['felt slip', 'felt_slip WHERE ride_id']
	],
	wheel: [
		['fitted period', 'fitted_period WHERE wheel_id'],
		['wheel on a bike', 'wheel_on_bike WHERE wheel_id'],
		['service', 'service WHERE wheel_id'],
		['unlogged distance', 'unlogged_distance WHERE wheel_id'],
		['odometer reading', 'odometer_reading WHERE wheel_id'],
		['inspection', 'inspection WHERE wheel_id'],
		['incident', 'incident WHERE wheel_id']
	]
};

/**
 * What was done to one thing and when, the newest first; of a ride also to its laps, felt slips and events, of a wheel
 * also to what was fitted, serviced, measured and reported on it.
 */
export function historyOf(
	ledger: Ledger,
	subject: string,
	subjectId: number | string,
	limit = 30
): TrailEntry[] {
	// each condition by itself goes through the index; conditions that ask for the subject as well go through all of the trail
	const of = [
		'(t.subject = @subject AND t.subject_id = @id)',
		...(Object.hasOwn(BELONGS, subject) ? BELONGS[subject] : []).map(([word, numbers]) =>
			numbers === null
				? `(t.subject = '${word}' AND t.subject_id = @id)`
				: `(t.subject = '${word}' AND t.subject_id IN (SELECT CAST(id AS TEXT) FROM ${numbers} = @id))`
		)
	];
	const rows = ledger.database
		.prepare<[object], StoredEntry>(
			`SELECT t.id, t.at_ms AS atMs, p.code AS by, t.action, t.subject, t.subject_id AS subjectId, t.detail
			FROM trail t JOIN person p ON p.id = t.actor_id
			WHERE ${of.join(' OR ')} ORDER BY t.id DESC LIMIT @limit`
		)
		.all({ subject, id: String(subjectId), limit });
	return toEntries(ledger, rows);
}

function toEntries(ledger: Ledger, rows: readonly StoredEntry[]): TrailEntry[] {
	const things = trailThings(ledger);
	return rows.map(({ atMs, detail, ...row }) => {
		const words = trailValues(ledger, row.subject);
		return {
			...row,
			at: toInstant(atMs),
			thing: things(row.subject, row.subjectId),
			...detailOf(JSON.parse(detail) as Record<string, unknown>, words)
		};
	});
}

function detailOf(
	detail: Readonly<Record<string, unknown>>,
	words: (name: string, value: unknown) => string
): Pick<TrailEntry, 'changes' | 'facts'> {
	// a lone before and after is the change of the thing itself
	const named = isChange(detail) ? { value: detail, ...without(detail, ['before', 'after']) } : detail;
	const changes: TrailEntry['changes'] = [];
	const facts: TrailEntry['facts'] = [];
	for (const [name, value] of Object.entries(named)) {
		const what = trailWord(name);
		if (isChange(value))
			changes.push({ what, before: words(name, value.before), after: words(name, value.after) });
		else facts.push({ what, value: words(name, value) });
	}
	return { changes, facts };
}

function isChange(value: unknown): value is { before: unknown; after: unknown } {
	return typeof value === 'object' && value !== null && 'before' in value && 'after' in value;
}

function without(
	detail: Readonly<Record<string, unknown>>,
	names: readonly string[]
): Record<string, unknown> {
	return Object.fromEntries(Object.entries(detail).filter(([name]) => !names.includes(name)));
}
