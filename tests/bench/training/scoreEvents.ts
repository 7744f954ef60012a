import type { TrueEvent } from './labelledRides';

export interface Found {
	readonly startS: number;
	readonly overrunDeg: number;
	readonly strength: number;
	readonly kind?: string;
}

export interface Score {
	readonly hit: number[];
	readonly all: number[];
	falseHealthy: number;
	kmHealthy: number;
	falseAll: number;
	kmAll: number;
	observedM: number;
	totalM: number;
	promised: number;
	kept: number;
	toldTwice: number;
	readonly onsetErrorS: number[];
	readonly sizeRatio: number[];
}

export const BANDS = [0, 30, 60, 120, Infinity];
const TOLERANCE_S = 3;

export function emptyScore(): Score {
	return {
		hit: [0, 0, 0, 0],
		all: [0, 0, 0, 0],
		falseHealthy: 0,
		kmHealthy: 0,
		falseAll: 0,
		kmAll: 0,
		observedM: 0,
		totalM: 0,
		promised: 0,
		kept: 0,
		toldTwice: 0,
		onsetErrorS: [],
		sizeRatio: []
	};
}

/** Whether a detection that starts then may be this event. */
export const near = (startS: number, e: TrueEvent) =>
	startS >= e.t0 - TOLERANCE_S && startS <= e.t1 + TOLERANCE_S;

/** Adds one ride: a detection within 3 s of a true event is a hit, each detection answers for one event. */
export function addRide(
	score: Score,
	truth: readonly TrueEvent[],
	km: number,
	events: readonly Found[],
	observed: readonly { startS: number; endS: number }[],
	observedM: number,
	totalM: number
): { missed: TrueEvent[]; wrong: Found[]; foundBy: Map<TrueEvent, Found> } {
	const slips = truth.filter((e) => e.kind !== 'chain skip');
	const used = new Set<Found>();
	const missed: TrueEvent[] = [];
	const foundBy = new Map<TrueEvent, Found>();
	for (const e of slips) {
		const band = BANDS.findIndex((low, i) => e.crankDeg >= low && e.crankDeg < BANDS[i + 1]);
		score.all[band]++;
		const seen = e.crankDeg >= 90 && observed.some((s) => e.t0 >= s.startS && e.t0 <= s.endS);
		if (seen) score.promised++;
		let best: Found | undefined;
		for (const found of events) {
			if (used.has(found) || !near(found.startS, e)) continue;
			if (!best || Math.abs(found.startS - e.t0) < Math.abs(best.startS - e.t0)) best = found;
		}
		if (!best) {
			missed.push(e);
			continue;
		}
		used.add(best);
		foundBy.set(e, best);
		score.hit[band]++;
		if (seen) score.kept++;
		score.onsetErrorS.push(Math.abs(best.startS - e.t0));
		score.sizeRatio.push(best.overrunDeg / e.crankDeg);
	}
	const wrong = events.filter((found) => !used.has(found) && !truth.some((e) => near(found.startS, e)));
	score.toldTwice += events.filter(
		(found) => !used.has(found) && slips.some((e) => near(found.startS, e))
	).length;
	score.falseAll += wrong.length;
	score.kmAll += km;
	score.observedM += observedM;
	score.totalM += totalM;
	if (slips.length === 0) {
		score.falseHealthy += wrong.length;
		score.kmHealthy += km;
	}
	return { missed, wrong, foundBy };
}
