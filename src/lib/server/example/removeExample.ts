import { rmSync } from 'node:fs';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { removeChannels } from '../queue/saveChannels';
import { writeSetting } from '../settings/storedSetting';
import { sourcePath } from '../store/sourceStore';
import { REMOVE_RELEASE } from './installRelease';
import { RELEASE_OWN_BUILDS, REMOVE_ATTACHMENTS, REMOVE_BILLS } from './removeBuilds';

const EXAMPLE_RIDES = 'SELECT id FROM ride WHERE example = 1';
const EXAMPLE_WHEELS = 'SELECT id FROM wheel WHERE example = 1';
const EXAMPLE_BUILDS = 'SELECT id FROM build WHERE example = 1';
const EXAMPLE_INSPECTIONS = `SELECT id FROM inspection WHERE wheel_id IN (${EXAMPLE_WHEELS})`;

/** In this order nothing refers to a row that is gone. */
const STEPS = [
	...RELEASE_OWN_BUILDS,
	...REMOVE_ATTACHMENTS,
	// a workshop's own rides stay: those that stood on the example need an answer again
	`UPDATE ride SET wheel_id = NULL WHERE example = 0 AND wheel_id IN (${EXAMPLE_WHEELS})`,
	`UPDATE ride SET chosen_build_id = NULL WHERE example = 0 AND chosen_build_id IN (${EXAMPLE_BUILDS})`,
	`UPDATE ride SET bike_id = NULL WHERE example = 0
		AND bike_id IN (SELECT id FROM bike WHERE example = 1)`,
	`UPDATE ride SET rider_id = NULL WHERE example = 0
		AND rider_id IN (SELECT id FROM person WHERE example = 1)`,
	`UPDATE ride SET twin_of = NULL, twin_decision = NULL WHERE example = 0 AND twin_of IN (${EXAMPLE_RIDES})`,
	// the same file handed in by the workshop itself is read again for its own sake
	`UPDATE import SET stage = 'waiting', ride_id = NULL, sentence = NULL, attempts = 0
		WHERE example = 0 AND ride_id IN (${EXAMPLE_RIDES})`,
	`UPDATE import SET stage = 'waiting', sentence = NULL, attempts = 0
		WHERE example = 0 AND stage = 'already in the ledger' AND ride_id IS NULL
		AND sha256 IN (SELECT sha256 FROM import WHERE example = 1)`,
	'DELETE FROM import WHERE example = 1',
	`DELETE FROM derivation WHERE ride_id IN (${EXAMPLE_RIDES})`,
	`DELETE FROM review_item WHERE ride_id IN (${EXAMPLE_RIDES})`,
	`DELETE FROM slip_event WHERE ride_id IN (${EXAMPLE_RIDES})`,
	`DELETE FROM verdict WHERE ride_id IN (${EXAMPLE_RIDES})`,
	...[
		'exposure_cell',
		'exposure_hour',
		'rider_mark',
		'recording_kind',
		'rider_mark_answer',
		'ride_cut',
		'felt_slip'
	].map((table) => `DELETE FROM ${table} WHERE ride_id IN (${EXAMPLE_RIDES})`),
	`DELETE FROM observed_stretch WHERE ride_id IN (${EXAMPLE_RIDES})`,
	`DELETE FROM result_detail WHERE ride_id IN (${EXAMPLE_RIDES})`,
	`DELETE FROM result WHERE ride_id IN (${EXAMPLE_RIDES})`,
	`DELETE FROM ride_signature WHERE ride_id IN (${EXAMPLE_RIDES})`,
	`UPDATE ride SET twin_of = NULL WHERE example = 1`,
	'DELETE FROM ride WHERE example = 1',
	`DELETE FROM fitted_period WHERE wheel_id IN (${EXAMPLE_WHEELS}) OR build_id IN (${EXAMPLE_BUILDS})`,
	...['service', 'odometer_reading', 'unlogged_distance'].map(
		(table) => `DELETE FROM ${table} WHERE wheel_id IN (${EXAMPLE_WHEELS})`
	),
	`DELETE FROM wheel_on_bike WHERE wheel_id IN (${EXAMPLE_WHEELS})
		OR bike_id IN (SELECT id FROM bike WHERE example = 1)`,
	'DELETE FROM bike WHERE example = 1',
	`DELETE FROM incident_closing WHERE incident_id IN
		(SELECT id FROM incident WHERE wheel_id IN (${EXAMPLE_WHEELS}))`,
	`DELETE FROM incident WHERE wheel_id IN (${EXAMPLE_WHEELS})`,
	`DELETE FROM inspection_value WHERE finding_id IN
		(SELECT id FROM inspection_finding WHERE inspection_id IN (${EXAMPLE_INSPECTIONS}))`,
	`DELETE FROM inspection_finding WHERE inspection_id IN (${EXAMPLE_INSPECTIONS})`,
	`DELETE FROM inspection WHERE id IN (${EXAMPLE_INSPECTIONS})`,
	`DELETE FROM hub_stack_element WHERE hub_stack_id IN
		(SELECT id FROM hub_stack WHERE build_id IN (${EXAMPLE_BUILDS}))`,
	`UPDATE hub_stack_element SET part_id = NULL WHERE part_id IN (SELECT id FROM part WHERE example = 1)`,
	`DELETE FROM hub_stack WHERE build_id IN (${EXAMPLE_BUILDS})`,
	'DELETE FROM stocked_spacer WHERE example = 1',
	...REMOVE_RELEASE,
	...REMOVE_BILLS,
	'DELETE FROM build WHERE example = 1',
	'DELETE FROM wheel WHERE example = 1',
	'DELETE FROM person WHERE example = 1',
	`DELETE FROM source WHERE sha256 NOT IN (SELECT sha256 FROM import WHERE sha256 IS NOT NULL)
		AND sha256 NOT IN (SELECT sha256 FROM attachment)`
];

/**
 * Takes the example workshop out as a whole: rows, results, traces, and files that nothing else uses. It
 * is invented, so nothing that happened is lost; that it was there and went stays in the trail.
 */
export function removeExample(ledger: Ledger, actor: Actor): void {
	const sources = ledger.database
		.prepare<[], { sha256: string }>(
			`SELECT sha256 FROM import WHERE example = 1 AND sha256 IS NOT NULL
			UNION SELECT sha256 FROM attachment`
		)
		.all();
	ledger.database
		.transaction(() => {
			for (const step of STEPS) ledger.database.prepare(step).run();
			writeSetting(ledger, 'started', 'example removed');
			leaveTrail(ledger, actor, 'removed', 'example', 'all', { sources: sources.length });
		})
		.immediate();
	const inUse = ledger.database.prepare('SELECT 1 FROM source WHERE sha256 = ?');
	for (const { sha256 } of sources) {
		if (inUse.get(sha256)) continue;
		removeChannels(ledger, sha256);
		rmSync(sourcePath(ledger.folder, sha256), { force: true });
	}
}
