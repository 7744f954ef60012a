/**
 * What tables and columns mean where the steps of the layout have no words beside them. A step that has
 * shipped is never changed, not even its comments.
 */
export const TABLE_WORDS: Readonly<Record<string, string>> = {
	setting: 'Settings of the workshop, each by its name.',
	wheel: 'Wheels: hub, sizes, tyre; known_good = a reference wheel that does not slip.',
	build: 'Builds: one configuration of a wheel each, with its state and its revision.',
	build_torque: 'Assembly torques of a build, wanted and recorded.',
	bike: 'Bikes: gears as stated, where speed and power are measured.',
	ride: 'Rides: one row a recording, with what its file says and what people say of it.',
	'ride.chosen_build_id':
		'a build that a person chose for the whole ride; else it follows from wheel and time',
	'ride.twin_of': 'an earlier ride that looks like the same recording',
	observed_stretch:
		'Stretches that could have shown a slip: on all of them together nine in ten slips of the reference size and more should be found, by one version of the analysis.',
	exposure_hour: 'What each hour of a ride was exposed to, by one version of the analysis.',
	slip_event: 'Events that one version of the analysis found on a ride; the verdict that stands now.',
	'slip_event.at_m': 'metres from the start of the ride, at onset',
	'slip_event.strength': 'strength of signs, 0 to 1, at the prevalence of the calibration; no chance',
	'slip_event.observed': '1 = it begins on an observed stretch',
	'slip_event.power_lost': 'share of the power before onset that was lost, 0 to 1',
	insertion_tally: 'Of slips that were put into a ride, how many were found, by size, place and torque.',
	inspection: 'Inspections of a wheel: when, by whom, at which distance.',
	answer_batch_change: 'What each of the answers to many rides changed, so that it can be taken back.'
};
