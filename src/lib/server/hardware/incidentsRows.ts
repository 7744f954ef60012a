import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

export const INCIDENT_KINDS = ['slip', 'failed pick-up', 'no drive any more', 'other failure'] as const;
export type IncidentKind = (typeof INCIDENT_KINDS)[number];

/** From a slip that was merely noticed to a fall. */
export const INCIDENT_SEVERITIES = ['noticed', 'hard to ride on', 'nearly fell', 'fell'] as const;
export type IncidentSeverity = (typeof INCIDENT_SEVERITIES)[number];

export const INCIDENT_OUTCOMES = [
	'counts as a slip',
	'no slip of this hub',
	'counted on a ride',
	'written down by mistake'
] as const;
export type IncidentOutcome = (typeof INCIDENT_OUTCOMES)[number];

export interface IncidentClosing {
	outcome: IncidentOutcome;
	reason: string;
	/** code of who closed it */
	by: string;
	atMs: number;
	/** null = it stands */
	supersededMs: number | null;
}

export interface IncidentRecord {
	id: number;
	wheelId: number;
	atMs: number;
	/** null = somebody outside the workshop */
	reportedBy: number | null;
	reporterCode: string | null;
	odometerM: number | null;
	what: IncidentKind;
	felt: string;
	severity: IncidentSeverity;
	/** 1 = somebody was hurt */
	injured: number;
	rowVersion: number;
	/** code of who wrote it down */
	writtenBy: string;
	createdMs: number;
	/** the oldest first; the last one stands unless it is superseded */
	closings: IncidentClosing[];
}

const SELECT = `SELECT i.id, i.wheel_id AS wheelId, i.at_ms AS atMs, i.reported_by AS reportedBy,
	r.code AS reporterCode, i.odometer_m AS odometerM, i.what, i.felt, i.severity, i.injured,
	i.row_version AS rowVersion, w.code AS writtenBy, i.created_ms AS createdMs
	FROM incident i LEFT JOIN person r ON r.id = i.reported_by JOIN person w ON w.id = i.created_by`;

type Row = Omit<IncidentRecord, 'closings'>;

/** The incidents of a wheel, or of all wheels, in order of time. */
export function listIncidents(ledger: Ledger, wheelId?: number): IncidentRecord[] {
	return ledger.database
		.prepare<[{ wheelId: number | null }], Row>(
			`${SELECT} WHERE @wheelId IS NULL OR i.wheel_id = @wheelId ORDER BY i.at_ms, i.id`
		)
		.all({ wheelId: wheelId ?? null })
		.map((row) => ({ ...row, closings: closingsOf(ledger, row.id) }));
}

/** @throws LedgerRefusal not-found */
export function findIncident(ledger: Ledger, incidentId: number): IncidentRecord {
	const row = ledger.database.prepare<[number], Row>(`${SELECT} WHERE i.id = ?`).get(incidentId);
	if (!row) throw new LedgerRefusal('not-found', 'There is no such incident.');
	return { ...row, closings: closingsOf(ledger, row.id) };
}

function closingsOf(ledger: Ledger, incidentId: number): IncidentClosing[] {
	return ledger.database
		.prepare<[number], IncidentClosing>(
			`SELECT c.outcome, c.reason, p.code AS by, c.at_ms AS atMs, c.superseded_ms AS supersededMs
			FROM incident_closing c JOIN person p ON p.id = c.actor_id WHERE c.incident_id = ? ORDER BY c.id`
		)
		.all(incidentId);
}

/** The closing that stands; null while the incident is open. */
export function standingClosing(incident: IncidentRecord): IncidentClosing | null {
	return incident.closings.find(({ supersededMs }) => supersededMs === null) ?? null;
}

/** An incident counts as a slip of its build unless it was shown otherwise. */
export function countsAsSlip(incident: IncidentRecord): boolean {
	const closing = standingClosing(incident);
	return closing === null || closing.outcome === 'counts as a slip';
}
