const EXAMPLE_WHEELS = 'SELECT id FROM wheel WHERE example = 1';
const EXAMPLE_BUILDS = 'SELECT id FROM build WHERE example = 1';
const EXAMPLE_PARTS = 'SELECT id FROM part WHERE example = 1';
const OWN_BUILDS = 'SELECT id FROM build WHERE example = 0';

/** A workshop's own builds stay; parts of the example that they took over are theirs by now. */
export const RELEASE_OWN_BUILDS = [
	`UPDATE build SET revision_of = NULL WHERE example = 0 AND revision_of IN (${EXAMPLE_BUILDS})`,
	`UPDATE build SET copied_from = NULL WHERE example = 0 AND copied_from IN (${EXAMPLE_BUILDS})`,
	`UPDATE part SET example = 0 WHERE example = 1 AND id IN (
		SELECT part_id FROM build_part WHERE build_id IN (${OWN_BUILDS})
		UNION ALL SELECT e.part_id FROM hub_stack_element e JOIN hub_stack s ON s.id = e.hub_stack_id
			WHERE s.build_id IN (${OWN_BUILDS}) AND e.part_id IS NOT NULL)`
];

/** Files of the example, and files that were attached to it since. */
export const REMOVE_ATTACHMENTS = [
	'DELETE FROM attachment WHERE example = 1',
	`DELETE FROM attachment WHERE subject = 'build' AND subject_id IN (${EXAMPLE_BUILDS})`,
	`DELETE FROM attachment WHERE subject = 'part' AND subject_id IN (${EXAMPLE_PARTS})`,
	`DELETE FROM attachment WHERE subject = 'wheel' AND subject_id IN (${EXAMPLE_WHEELS})`,
	`DELETE FROM attachment WHERE subject = 'felt slip' AND subject_id IN
		(SELECT f.id FROM felt_slip f JOIN ride r ON r.id = f.ride_id WHERE r.example = 1)`,
	...['inspection', 'incident', 'service'].map(
		(table) => `DELETE FROM attachment WHERE subject = '${table}' AND subject_id IN
			(SELECT id FROM ${table} WHERE wheel_id IN (${EXAMPLE_WHEELS}))`
	)
];

/** What hangs on the example's builds, and its parts; then the builds themselves can go. */
export const REMOVE_BILLS = [
	...['bench_check', 'build_torque', 'build_part'].map(
		(table) => `DELETE FROM ${table} WHERE build_id IN (${EXAMPLE_BUILDS})`
	),
	`DELETE FROM part_length WHERE part_id IN (${EXAMPLE_PARTS})`,
	'DELETE FROM part WHERE example = 1'
];
