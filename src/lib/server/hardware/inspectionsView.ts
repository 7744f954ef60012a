import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';
import type { Finding } from './inspectionsInput';
import { findInspection, listInspections, type InspectionRecord } from './inspectionsRows';
import { wheelAtInstants, type WheelAtInstant } from './inspectionsWheel';
import { findWheel } from './wheels';

/** An inspection with what was on the wheel then. */
export interface InspectionView extends WheelAtInstant {
	id: number;
	wheel: { id: number; name: string };
	at: Instant;
	odometerM: number | null;
	inspectedBy: number;
	/** code of who inspected */
	by: string;
	note: string;
	findings: (Finding & { beyondLimit: boolean })[];
	rowVersion: number;
	/** null = it stands */
	withdrawnReason: string | null;
}

/** The inspections of a wheel that stand, the newest first. @throws LedgerRefusal not-found */
export function inspectionsOfWheel(ledger: Ledger, wheelId: number): InspectionView[] {
	const wheel = findWheel(ledger, wheelId);
	const at = wheelAtInstants(ledger, wheelId);
	return listInspections(ledger, wheelId)
		.reverse()
		.map((record) => viewOf(record, wheel, at(record.atMs)));
}

/** One inspection of a wheel; null when there is none of this number. */
export function inspectionView(ledger: Ledger, wheelId: number, inspectionId: number): InspectionView | null {
	const known = ledger.database
		.prepare('SELECT 1 FROM inspection WHERE id = ? AND wheel_id = ?')
		.get(inspectionId, wheelId);
	if (!known) return null;
	const wheel = findWheel(ledger, wheelId);
	const record = findInspection(ledger, inspectionId);
	return viewOf(record, wheel, wheelAtInstants(ledger, wheelId)(record.atMs));
}

function viewOf(
	record: InspectionRecord,
	wheel: { id: number; name: string },
	then: WheelAtInstant
): InspectionView {
	const { wheelId: _, atMs, byCode, findings, ...rest } = record;
	return {
		...rest,
		...then,
		wheel: { id: wheel.id, name: wheel.name },
		at: toInstant(atMs),
		by: byCode,
		findings: findings.map((finding) => ({ ...finding, beyondLimit: isBeyondLimit(finding) }))
	};
}

/** Whether the mean of the readings lies beyond the limit that was written down with them. */
function isBeyondLimit({ values, wearLimit, limitIs }: Finding): boolean {
	if (wearLimit === null || values.length === 0) return false;
	const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
	return limitIs === 'lowest' ? mean < wearLimit : mean > wearLimit;
}
