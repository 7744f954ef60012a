import { checkFinite } from './checks';
import { windowAt } from './windowAt';

/** A stretch of age (distance, time) during which a system was watched: an event in it would have been counted. */
export interface Window {
	readonly from: number;
	readonly to: number;
}

/** The events of one system by age, and the windows in which it was watched. */
export interface WatchedHistory {
	readonly windows: readonly Window[];
	/** ages of events; several at one age are several events */
	readonly events: readonly number[];
}

/** How watching ended: at an age fixed apart from the events, or with the last event. */
export type Ending = 'age' | 'event';

/** A system watched without a gap from age 0 to `end`. */
export function watchedFromNew(events: readonly number[], end: number): WatchedHistory {
	return { windows: [{ from: 0, to: end }], events };
}

/** Windows in rising order. */
export function sortedWindows(windows: readonly Window[]): Window[] {
	return [...windows].sort((a, b) => a.from - b.from || a.to - b.to);
}

/** All windows of a history, added up. */
export function watchedExposure({ windows }: WatchedHistory): number {
	return windows.reduce((sum, { from, to }) => sum + (to - from), 0);
}

/** True when a history is one window that begins at age 0. */
export function isWatchedFromNew({ windows }: WatchedHistory): boolean {
	return windows.length === 1 && windows[0].from === 0;
}

/**
 * Refuses histories whose windows overlap or run backwards, and events outside them.
 *
 * @param histories one a system
 * @throws RangeError that names the age at fault
 */
export function checkHistories(histories: readonly WatchedHistory[]): void {
	for (const { windows, events } of histories) {
		const sorted = sortedWindows(windows);
		sorted.forEach(({ from, to }, i) => {
			checkFinite('from', from);
			checkFinite('to', to);
			if (from < 0 || to < from) throw new RangeError(`a window must run forwards; it is ${from} to ${to}`);
			if (i > 0 && from < sorted[i - 1].to) throw new RangeError(`windows overlap at ${from}`);
		});
		for (const age of events)
			if (!(age <= sorted[windowAt(sorted, age)]?.to))
				throw new RangeError(`the event at ${age} lies outside every window`);
	}
}

/**
 * The same histories, ended by their last events: that event fixes the end and no longer counts as one. What
 * has no event drops out. Only histories watched from new without a gap end so.
 */
export function withoutEndingEvent(histories: readonly WatchedHistory[]): WatchedHistory[] {
	return histories.flatMap((history) => {
		if (!isWatchedFromNew(history)) throw new RangeError('ending with an event needs one window from age 0');
		if (history.events.length === 0) return [];
		const sorted = [...history.events].sort((a, b) => a - b);
		const end = sorted[sorted.length - 1];
		return [watchedFromNew(sorted.slice(0, -1), end)];
	});
}
