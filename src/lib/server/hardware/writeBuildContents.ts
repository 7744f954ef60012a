import type { Ledger } from '../ledger/openLedger';
import type { BuildContents } from './buildContents';

/** Writes a build's contents over what stood there. Belongs in the caller's transaction, after its checks. */
export function writeBuildContents(ledger: Ledger, buildId: number, contents: BuildContents): void {
	const { database } = ledger;
	const { bill, torques, ...build } = contents;
	database
		.prepare(
			`UPDATE build SET name = @name, description = @description, step_hub_deg = @stepHubDeg,
				built_by = @builtBy, built_ms = @builtMs, preload = @preload, end_float_mm = @endFloatMm,
				notes = @notes, row_version = row_version + 1 WHERE id = @buildId`
		)
		.run({ ...build, buildId });
	database.prepare('DELETE FROM build_part WHERE build_id = ?').run(buildId);
	const addPart = database.prepare(
		`INSERT INTO build_part (build_id, position, part_id, quantity, serial, note)
		VALUES (@buildId, @position, @partId, @quantity, @serial, @note)`
	);
	bill.forEach((line, i) => addPart.run({ ...line, buildId, position: i + 1 }));
	database.prepare('DELETE FROM build_torque WHERE build_id = ?').run(buildId);
	const addTorque = database.prepare(
		`INSERT INTO build_torque (build_id, position, joint, wanted_nm, recorded_nm, tool, by, at_ms)
		VALUES (@buildId, @position, @joint, @wantedNm, @recordedNm, @tool, @personId, @atMs)`
	);
	torques.forEach((line, i) => addTorque.run({ ...line, buildId, position: i + 1 }));
}
