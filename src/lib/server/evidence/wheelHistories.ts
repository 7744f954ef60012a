import type { WatchedHistory, Window } from '$lib/reliability/watchedHistory';
import type { Counting } from './binnedRates';
import type { BuildEvidence, EvidenceRide } from './buildEvidence';
import { countedSlips } from './countedSlips';
import { gatherWindows } from './gatherWindows';

/** stretches nearer than this are one: rounding of stored metres must not cut them apart */
const TOUCHING_M = 1;

/**
 * The life of each wheel of a build as statistics of repeated events see it: where on the age axis a slip
 * would have been found, and at which ages one was. Ages are metres above 0.
 *
 * @returns one history a wheel that was observed at all, in the order of the wheels; where the clock of age began
 *   anew (a service), each stretch is a history of its own
 */
export function wheelHistories(evidence: BuildEvidence, counting: Counting): WatchedHistory[] {
	return livesOf(evidence).flatMap((rides) => {
		const windows = observedAges(rides);
		if (windows.length === 0) return [];
		const events = rides.flatMap((ride) =>
			countedSlips(ride.events, counting.unit, counting.unreviewed).map(({ atM }) =>
				withinWindows(windows, ride.ageFromM + atM)
			)
		);
		return [{ windows, events: events.sort((a, b) => a - b) }];
	});
}

/**
 * Where on the age axis rides could have shown a slip; stretches that touch are one, and more of them than can be told
 * apart are gathered.
 *
 * @param rides of one wheel and life
 */
export function observedAges(rides: readonly EvidenceRide[], most?: number): Window[] {
	return gatherWindows(joined(rides.flatMap(windowsOf)), most);
}

function livesOf({ wheels, rides }: BuildEvidence): EvidenceRide[][] {
	return wheels.flatMap(({ id }) => {
		const onWheel = rides.filter(({ wheelId }) => wheelId === id);
		return [...new Set(onWheel.map(({ life }) => life))].map((one) =>
			onWheel.filter(({ life }) => life === one)
		);
	});
}

/** no stretch reaches into the ride that follows, whatever rounding did to it */
function windowsOf({ ageFromM, totalM, observed }: EvidenceRide): Window[] {
	return observed.map(({ fromM, toM }) => ({
		from: ageFromM + Math.min(fromM, totalM),
		to: ageFromM + Math.min(toM, totalM)
	}));
}

function joined(windows: readonly Window[]): Window[] {
	const all: { from: number; to: number }[] = [];
	for (const { from, to } of [...windows].sort((a, b) => a.from - b.from)) {
		const last = all[all.length - 1];
		if (last && from <= last.to + TOUCHING_M) last.to = Math.max(last.to, to);
		else if (to > from) all.push({ from, to });
	}
	return all;
}

/** An event begins on an observed stretch; stored metres are rounded, so it may lie a little beside it. */
function withinWindows(windows: readonly Window[], ageM: number): number {
	let nearest = NaN;
	for (const { from, to } of windows) {
		// the age 0 has no logarithm: an event there came within the first metre
		const inside = Math.max(Math.min(Math.max(ageM, from), to), Math.min(1, to));
		if (Number.isNaN(nearest) || Math.abs(inside - ageM) < Math.abs(nearest - ageM)) nearest = inside;
	}
	return nearest;
}
