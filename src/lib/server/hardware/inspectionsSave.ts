import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { checkInspection, type CheckedInspection, type InspectionInput } from './inspectionsInput';
import { findInspection, writeFindings, type InspectionRecord } from './inspectionsRows';
import { refuseBeforeWheel, refuseFuture } from './periodRows';
import { findWheel } from './wheels';

/**
 * Writes down what was found when a hub was opened.
 *
 * @param options.example the invented workshop keeps its dates, whatever this machine's clock says
 * @returns id of the inspection
 * @throws LedgerRefusal not-found; wrong-value, also for a date before the wheel or still to come
 */
export function recordInspection(
	ledger: Ledger,
	actor: Actor,
	wheelId: number,
	input: InspectionInput,
	options: { example?: boolean } = {}
): number {
	return ledger.database
		.transaction((): number => {
			const wheel = findWheel(ledger, wheelId);
			const inspection = checkInspection(ledger, wheel, input);
			if (!options.example) refuseFuture(ledger, inspection.atMs);
			refuseBeforeWheel(ledger, wheel, inspection.atMs);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO inspection (wheel_id, at_ms, odometer_m, inspected_by, note, created_ms)
					VALUES (@wheelId, @atMs, @odometerM, @inspectedBy, @note, @now)`
				)
				.run({ ...columns(inspection), wheelId, now: ledger.now() });
			const inspectionId = Number(lastInsertRowid);
			writeFindings(ledger, inspectionId, inspection.findings);
			leaveTrail(ledger, actor, 'recorded', 'inspection', inspectionId, {
				wheelId,
				after: told(inspection)
			});
			return inspectionId;
		})
		.immediate();
}

/**
 * Corrects an inspection; what it said before stays in the trail.
 *
 * @param seenVersion row version that the form was filled from
 * @throws LedgerRefusal not-found; wrong-value; conflict when another person changed it meanwhile or it was
 *   withdrawn
 */
export function correctInspection(
	ledger: Ledger,
	actor: Actor,
	inspectionId: number,
	input: InspectionInput,
	seenVersion: number
): void {
	ledger.database
		.transaction(() => {
			const before = findInspection(ledger, inspectionId);
			const wheel = findWheel(ledger, before.wheelId);
			const inspection = checkInspection(ledger, wheel, input);
			refuseStale(before, seenVersion);
			refuseFuture(ledger, inspection.atMs);
			refuseBeforeWheel(ledger, wheel, inspection.atMs);
			ledger.database
				.prepare(
					`UPDATE inspection SET at_ms = @atMs, odometer_m = @odometerM, inspected_by = @inspectedBy,
						note = @note, row_version = row_version + 1 WHERE id = @inspectionId`
				)
				.run({ ...columns(inspection), inspectionId });
			writeFindings(ledger, inspectionId, inspection.findings);
			leaveTrail(ledger, actor, 'corrected', 'inspection', inspectionId, {
				before: told(before),
				after: told(inspection)
			});
		})
		.immediate();
}

/** Takes an inspection back, with the reason; it stays readable. @throws LedgerRefusal */
export function withdrawInspection(ledger: Ledger, actor: Actor, inspectionId: number, reason: string): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 500 });
	ledger.database
		.transaction(() => {
			const before = findInspection(ledger, inspectionId);
			refuseStale(before, before.rowVersion);
			ledger.database
				.prepare('UPDATE inspection SET withdrawn_ms = ?, withdrawn_reason = ? WHERE id = ?')
				.run(ledger.now(), cleaned, inspectionId);
			leaveTrail(ledger, actor, 'withdrew', 'inspection', inspectionId, {
				reason: cleaned,
				before: told(before)
			});
		})
		.immediate();
}

function refuseStale(before: InspectionRecord, seenVersion: number): void {
	if (before.withdrawnReason !== null)
		throw new LedgerRefusal('conflict', `This inspection was withdrawn: ${before.withdrawnReason}`);
	if (before.rowVersion !== seenVersion)
		throw new LedgerRefusal(
			'conflict',
			'Someone corrected this inspection while you were at it; nothing was overwritten. Open it again and enter your correction there.'
		);
}

function columns({ atMs, odometerM, inspectedBy, note }: CheckedInspection) {
	return { atMs, odometerM, inspectedBy, note };
}

function told(inspection: CheckedInspection) {
	const { atMs, ...rest } = { ...columns(inspection), findings: inspection.findings };
	return { at: toInstant(atMs), ...rest };
}
