import type { Ledger } from '../ledger/openLedger';

/** What a stack needs to know of a wheel that its build was fitted on. */
export interface WheelForStack {
	id: number;
	name: string;
	/** null = not written down */
	overLocknutMm: number | null;
	/** rim centre from the midplane, positive towards the drive side */
	rimOffsetWantedMm: number | null;
}

/** The wheels that a build is or was fitted on, in order of their names. */
export function wheelsOfBuild(ledger: Ledger, buildId: number): WheelForStack[] {
	return ledger.database
		.prepare<[number], WheelForStack>(
			`SELECT id, name, over_locknut_mm AS overLocknutMm, rim_offset_wanted_mm AS rimOffsetWantedMm
			FROM wheel WHERE id IN (SELECT wheel_id FROM fitted_period WHERE build_id = ? AND withdrawn_ms IS NULL)
			ORDER BY name`
		)
		.all(buildId);
}
