import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import {
	findIncident,
	INCIDENT_KINDS,
	INCIDENT_SEVERITIES,
	type IncidentKind,
	type IncidentRecord,
	type IncidentSeverity
} from './incidentsRows';
import { checkOdometer, refuseStranger } from './inspectionsInput';
import { refuseBeforeWheel, refuseFuture } from './periodRows';
import { findWheel } from './wheels';

export interface IncidentInput {
	/** ISO 8601 with a zone */
	at: string;
	/** null = somebody outside the workshop, who stays unnamed */
	reportedBy: number | null;
	odometerM?: number | null;
	what: string;
	/** what was felt, in the reporter's words */
	felt: string;
	severity: string;
	injured: boolean;
}

interface CheckedIncident {
	atMs: number;
	reportedBy: number | null;
	odometerM: number | null;
	what: IncidentKind;
	felt: string;
	severity: IncidentSeverity;
	injured: number;
}

/**
 * Writes down a slip or failure that was reported without a ride file. From then on it counts as a slip of
 * the build that was on the wheel, beside the rate, until it is closed as something else.
 *
 * @param options.example the invented workshop keeps its dates, whatever this machine's clock says
 * @returns id of the incident
 * @throws LedgerRefusal not-found; wrong-value, also for a date before the wheel or still to come
 */
export function reportIncident(
	ledger: Ledger,
	actor: Actor,
	wheelId: number,
	input: IncidentInput,
	options: { example?: boolean } = {}
): number {
	return ledger.database
		.transaction((): number => {
			const incident = checkIncident(ledger, wheelId, input, options);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO incident (wheel_id, at_ms, reported_by, odometer_m, what, felt, severity, injured,
						created_by, created_ms)
					VALUES (@wheelId, @atMs, @reportedBy, @odometerM, @what, @felt, @severity, @injured, @by, @now)`
				)
				.run({ ...incident, wheelId, by: actor.personId, now: ledger.now() });
			const incidentId = Number(lastInsertRowid);
			leaveTrail(ledger, actor, 'reported', 'incident', incidentId, { wheelId, after: told(incident) });
			return incidentId;
		})
		.immediate();
}

/**
 * Corrects a report; what it said before stays in the trail.
 *
 * @param seenVersion row version that the form was filled from
 * @throws LedgerRefusal not-found; wrong-value; conflict when another person corrected it meanwhile
 */
export function correctIncident(
	ledger: Ledger,
	actor: Actor,
	incidentId: number,
	input: IncidentInput,
	seenVersion: number
): void {
	ledger.database
		.transaction(() => {
			const before = findIncident(ledger, incidentId);
			const incident = checkIncident(ledger, before.wheelId, input);
			if (before.rowVersion !== seenVersion)
				throw new LedgerRefusal(
					'conflict',
					'Someone changed this incident while you were at it; nothing was overwritten. Open it again and enter your correction there.'
				);
			ledger.database
				.prepare(
					`UPDATE incident SET at_ms = @atMs, reported_by = @reportedBy, odometer_m = @odometerM,
						what = @what, felt = @felt, severity = @severity, injured = @injured,
						row_version = row_version + 1 WHERE id = @incidentId`
				)
				.run({ ...incident, incidentId });
			leaveTrail(ledger, actor, 'corrected', 'incident', incidentId, {
				before: told(before),
				after: told(incident)
			});
		})
		.immediate();
}

function checkIncident(
	ledger: Ledger,
	wheelId: number,
	input: IncidentInput,
	options: { example?: boolean } = {}
): CheckedIncident {
	const wheel = findWheel(ledger, wheelId);
	const atMs = fromInstant(input.at);
	if (!options.example) refuseFuture(ledger, atMs);
	refuseBeforeWheel(ledger, wheel, atMs);
	if (!INCIDENT_KINDS.includes(input.what as IncidentKind))
		throw new LedgerRefusal(
			'wrong-value',
			'Say what happened: a slip, a failed pick-up, no drive any more, or another failure.'
		);
	if (!INCIDENT_SEVERITIES.includes(input.severity as IncidentSeverity))
		throw new LedgerRefusal('wrong-value', 'Say how bad it was, from noticed to a fall.');
	const { reportedBy } = input;
	if (reportedBy !== null)
		refuseStranger(ledger, wheel, reportedBy, 'The person who reported it is not in the ledger.');
	return {
		atMs,
		reportedBy,
		odometerM: checkOdometer(input.odometerM ?? null),
		what: input.what as IncidentKind,
		felt: checkText('What was felt', input.felt, { min: 3, max: 2000 }),
		severity: input.severity as IncidentSeverity,
		injured: input.injured ? 1 : 0
	};
}

function told({
	atMs,
	reportedBy,
	odometerM,
	what,
	felt,
	severity,
	injured
}: CheckedIncident | IncidentRecord) {
	return { at: toInstant(atMs), reportedBy, odometerM, what, felt, severity, injured };
}
