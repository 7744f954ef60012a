/** A lap on a ride whose laps mean slips. */
export interface JudgedMark {
	/** a slip just before it would have been seen */
	readonly observed: boolean;
	/** what a person said of a lap without an event; null = not answered */
	readonly answer: 'a slip was felt' | 'something else' | null;
	/** the event it is taken to mean; null = none */
	readonly event: number | null;
}

/** An event of the same ride. */
export interface JudgedEvent {
	/** of the reference size or more, beginning on an observed stretch */
	readonly inRate: boolean;
	readonly verdict: 'confirmed' | 'rejected' | null;
}

/** How the tool's findings and the rider's laps agree on observed stretches: for an estimate from two lists. */
export interface RiderMarkCounts {
	/** confirmed slips that the rider marked */
	readonly both: number;
	/** laps without an event of which a person said that a slip was felt */
	readonly markOnly: number;
	/** confirmed slips without a lap */
	readonly detectionOnly: number;
	/** laps and events that nobody has answered or reviewed: while there are any, the counts may move */
	readonly waiting: number;
}

/**
 * Counts slips that both the tool and the rider noted, the rider alone, the tool alone, on observed
 * stretches only. A lap that means a smaller event, or one elsewhere, is in none of the counts.
 *
 * @param marks the laps of one ride
 * @param events its events; `event` of a mark is an index in it
 * @example riderMarkCounts([{ observed: true, answer: null, event: 0 }], [{ inRate: true, verdict: 'confirmed' }])
 * // { both: 1, markOnly: 0, detectionOnly: 0, waiting: 0 }
 */
export function riderMarkCounts(
	marks: readonly JudgedMark[],
	events: readonly JudgedEvent[]
): RiderMarkCounts {
	const marked = new Set(marks.map(({ event }) => event));
	const alone = marks.filter(({ observed, event }) => observed && event === null);
	let both = 0;
	let detectionOnly = 0;
	let unreviewed = 0;
	events.forEach(({ inRate, verdict }, event) => {
		if (!inRate) return;
		if (verdict === null) unreviewed++;
		else if (verdict === 'confirmed' && marked.has(event)) both++;
		else if (verdict === 'confirmed') detectionOnly++;
	});
	return {
		both,
		markOnly: alone.filter(({ answer }) => answer === 'a slip was felt').length,
		detectionOnly,
		waiting: unreviewed + alone.filter(({ answer }) => answer === null).length
	};
}
