import type { Ledger } from '../ledger/openLedger';

/** One line of a build's bill of parts, in order of assembly. */
export interface BillLine {
	partId: number;
	/** pieces; grams of a lubricant */
	quantity: number;
	/** '' = it bears none */
	serial: string;
	note: string;
}

/** One joint that is tightened. */
export interface TorqueLine {
	joint: string;
	/** the maker's or the drawing's figure, Nm */
	wantedNm: number | null;
	/** what was tightened to, Nm; null = not written down */
	recordedNm: number | null;
	tool: string;
	/** who tightened it, and when, milliseconds since 1970 UTC */
	personId: number | null;
	atMs: number | null;
}

/** Everything about a build's hardware that a change of it can change. */
export interface BuildContents {
	name: string;
	description: string;
	stepHubDeg: number | null;
	builtBy: number | null;
	builtMs: number | null;
	preload: string;
	endFloatMm: number | null;
	notes: string;
	bill: BillLine[];
	torques: TorqueLine[];
}

/** The bill of one build, in order of assembly. */
export function billOf(ledger: Ledger, buildId: number): BillLine[] {
	return ledger.database
		.prepare<[number], BillLine>(
			`SELECT part_id AS partId, quantity, serial, note
			FROM build_part WHERE build_id = ? ORDER BY position`
		)
		.all(buildId);
}

/** The joints of one build, in order of assembly. */
export function torquesOf(ledger: Ledger, buildId: number): TorqueLine[] {
	return ledger.database
		.prepare<[number], TorqueLine>(
			`SELECT joint, wanted_nm AS wantedNm, recorded_nm AS recordedNm, tool, by AS personId, at_ms AS atMs
			FROM build_torque WHERE build_id = ? ORDER BY position`
		)
		.all(buildId);
}

/** Everything about a build's hardware; null when there is no such build. */
export function buildContents(ledger: Ledger, buildId: number): BuildContents | null {
	const build = ledger.database
		.prepare<[number], Omit<BuildContents, 'bill' | 'torques'>>(
			`SELECT name, description, step_hub_deg AS stepHubDeg, built_by AS builtBy, built_ms AS builtMs,
				preload, end_float_mm AS endFloatMm, notes FROM build WHERE id = ?`
		)
		.get(buildId);
	return build ? { ...build, bill: billOf(ledger, buildId), torques: torquesOf(ledger, buildId) } : null;
}
