import { distanceReached } from '$lib/hardware/distanceReached';
import type { DistancePiece } from '$lib/hardware/wheelAxis';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';

/** Something that was written down of a wheel by hand, on its distance axis. */
export interface NoticeOnAxis {
	kind: 'inspection' | 'incident';
	id: number;
	at: Instant;
	atM: number;
	/** in words, for tables */
	words: string;
}

/** Inspections and incidents of a wheel in order of time; incidents stay, also when they are closed. */
export function noticesOnAxis(
	ledger: Ledger,
	wheelId: number,
	axis: readonly DistancePiece[]
): NoticeOnAxis[] {
	const rows = ledger.database
		.prepare<{ wheelId: number }, { kind: NoticeOnAxis['kind']; id: number; atMs: number; words: string }>(
			`SELECT 'inspection' AS kind, i.id, i.at_ms AS atMs,
				coalesce((SELECT group_concat(kind, ', ') FROM (SELECT DISTINCT f.kind FROM inspection_finding f
					WHERE f.inspection_id = i.id ORDER BY f.position)), '') AS words
			FROM inspection i WHERE i.wheel_id = @wheelId AND i.withdrawn_ms IS NULL
			UNION ALL
			SELECT 'incident', n.id, n.at_ms,
				n.what || ', ' || n.severity || coalesce(' (closed: ' || c.outcome || ')', '')
			FROM incident n LEFT JOIN incident_closing c ON c.incident_id = n.id AND c.superseded_ms IS NULL
			WHERE n.wheel_id = @wheelId
			ORDER BY atMs, kind, id`
		)
		.all({ wheelId });
	return rows.map(({ atMs, ...notice }) => ({
		...notice,
		at: toInstant(atMs),
		atM: distanceReached(axis, atMs)
	}));
}
