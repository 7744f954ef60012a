import type { Bike } from '$lib/drivetrain/bike';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { DEFAULT_CIRCUMFERENCE_M } from '$lib/drivetrain/nameGears';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import type { Ride } from '$lib/ride/ride';
import { isLoggerRide } from './analyseLoggerRide';
import { analyseRide } from './analyseRide';
import { REFERENCE_SLIP_CRANK_DEG, type RideAnalysis, type SlipEvent } from './analysis';
import { insertionPlaces, type InsertionPlace } from './insertionPlaces';
import { INSERTED_SIZES_DEG, insertionPlan, LOGGER_SIZES_DEG, type PlannedSlip } from './insertionPlan';
import { drawSlip, putSlip, recordsToChange, withRecords } from './putSlip';
import { onCrankClock } from './onCrankClock';
import { rideContext } from './rideContext';
import { reviewProbe, type ReviewProbe } from './reviewProbe';
import { isPowerSlow } from './rideResponse';
import { seededChance, type Chance } from './seededChance';
import { withLoggerSlips } from './withLoggerSlips';

/** How many slips of one size in one kind of place were put in and how many of them were found. */
export interface InsertionTally {
	readonly sizeCrankDeg: number;
	readonly place: InsertionPlace;
	/** lower edge of the torque bin, Nm; null = not known */
	readonly torqueFromNm: number | null;
	/** whether the ride called that second observed before anything was put in */
	readonly observed: boolean;
	readonly put: number;
	readonly found: number;
}

export interface InsertionResult {
	readonly analysisVersion: number;
	readonly seed: number;
	readonly passes: number;
	readonly put: number;
	readonly found: number;
	/** largest difference of observed metres between a pass and the ride itself */
	readonly observedChangeM: number;
	/** why nothing could be put in; null = something was */
	readonly notRun: string | null;
	readonly tallies: readonly InsertionTally[];
	/** some of those that were found, for the review; none of a ride with a clock of its own (a logger's) */
	readonly probes: readonly ReviewProbe[];
}

/** one slip as it went: for the benchmark */
export interface InsertedSlip extends PlannedSlip {
	readonly observed: boolean;
	/** smallest overrun that the ride promised to show there, crank degrees; NaN = none */
	readonly limitDeg: number;
	readonly found: boolean;
}

/** as many as one ride gives to the review: slips of the reference size and more, one a pass */
const MOST_PROBES = 4;

/** a detection this near to a slip is that slip, s; as in the benchmark */
const TOLERANCE_S = 3;

/**
 * Puts slips of known sizes into a ride of one's own, analyses it again each time and counts which were found:
 * the detection limit put to the test on this very recording. What is put in is a model of a slip, not a slip.
 *
 * @param ride a decoded ride; it stays as it is
 * @param bike what the analysis is told of the bike
 * @param seed the same seed puts the same slips into the same places
 * @param each is told of every slip as it went
 * @returns counts by size, place, torque and whether the place was observed; nothing put in, with the reason,
 *   where the ride has no place for a slip
 */
export function insertionTest(
	ride: Ride,
	bike: Bike,
	seed: number,
	each: (slip: InsertedSlip) => void = () => {}
): InsertionResult {
	const base = analyseRide(ride, bike);
	const result = {
		analysisVersion: base.analysisVersion,
		seed,
		passes: 0,
		put: 0,
		found: 0,
		observedChangeM: 0
	};
	if (!recordsToChange(ride))
		return { ...result, notRun: 'no cadence was recorded', tallies: [], probes: [] };
	const chance = seededChance(seed);
	const { passes, prompt } = planFor(ride, bike, base, chance);
	if (passes.length === 0)
		return { ...result, notRun: 'too little was pedalled under load', tallies: [], probes: [] };
	const tallies = new Map<string, InsertionTally>();
	const probes: ReviewProbe[] = [];
	for (const pass of passes) {
		const analysis = analyseRide(putAll(ride, pass, chance, prompt), bike);
		result.observedChangeM = Math.max(result.observedChangeM, Math.abs(analysis.observedM - base.observedM));
		const found = whichWereFound(pass, analysis);
		pass.forEach((planned, k) => {
			const slip = { ...planned, ...promiseAt(base, planned.second), found: found[k] !== null };
			each(slip);
			count(tallies, slip);
			result.put++;
			if (slip.found) result.found++;
		});
		const shown = isLoggerRide(ride) ? -1 : pass.findIndex((slip, k) => servesReview(slip, found[k]));
		if (shown >= 0 && probes.length < MOST_PROBES)
			probes.push(reviewProbe(analysis, found[shown]!, pass[shown].crankDeg));
	}
	return {
		...result,
		passes: passes.length,
		notRun: null,
		tallies: [...tallies.values()].sort(bySizeThenTorque),
		probes
	};
}

function planFor(ride: Ride, bike: Bike, { events }: RideAnalysis, chance: Chance) {
	const grid = secondGrid(ride, bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M);
	const context = rideContext(driveSignals(grid), bike);
	const places = insertionPlaces(context, bike.powerAt ?? 'crank', events);
	const sizesDeg = isLoggerRide(ride) ? LOGGER_SIZES_DEG : INSERTED_SIZES_DEG;
	return { passes: insertionPlan(places, chance, sizesDeg), prompt: !isPowerSlow(context.response) };
}

/** What the ride says of a second before anything is put in. */
function promiseAt({ observed, traces }: RideAnalysis, second: number) {
	return {
		observed: observed.some(({ startS, endS }) => second >= startS && second < endS),
		limitDeg: traces.detectionLimitCrankDeg[second]
	};
}

function putAll(ride: Ride, pass: readonly PlannedSlip[], chance: Chance, prompt: boolean): Ride {
	const slips = pass.map(({ second, crankDeg }) =>
		drawSlip(second + 0.999 * chance.next(), crankDeg, chance, prompt)
	);
	if (isLoggerRide(ride)) return withLoggerSlips(onCrankClock(ride), slips);
	const records = recordsToChange(ride)!;
	for (const slip of slips) putSlip(records, slip, () => chance.between(0.3, 1));
	return withRecords(ride, records);
}

/** Bursts are left out: their slips stand in each other's picture. */
function servesReview({ crankDeg, place }: PlannedSlip, event: SlipEvent | null): boolean {
	return event?.kind === 'slip' && place !== 'burst' && crankDeg >= REFERENCE_SLIP_CRANK_DEG;
}

/** The event that stands for each slip. Each stands for one at most, the nearest ones go together first. */
function whichWereFound(pass: readonly PlannedSlip[], { events }: RideAnalysis): (SlipEvent | null)[] {
	const found: (SlipEvent | null)[] = pass.map(() => null);
	const taken = new Set<number>();
	const pairs = pass.flatMap(({ second }, slip) =>
		events.flatMap((event, number) => {
			const offS = Math.abs(event.startS - second - 0.5);
			const drives = event.kind === 'slip' || event.kind === 'failed pick-up';
			return drives && offS <= TOLERANCE_S + 0.5 ? [{ slip, number, offS }] : [];
		})
	);
	pairs.sort((a, b) => a.offS - b.offS);
	for (const { slip, number } of pairs) {
		if (found[slip] || taken.has(number)) continue;
		found[slip] = events[number];
		taken.add(number);
	}
	return found;
}

function count(tallies: Map<string, InsertionTally>, slip: InsertedSlip): void {
	const { crankDeg: sizeCrankDeg, place, torqueFromNm, observed } = slip;
	const key = [sizeCrankDeg, place, torqueFromNm, observed].join('|');
	const before = tallies.get(key) ?? { sizeCrankDeg, place, torqueFromNm, observed, put: 0, found: 0 };
	tallies.set(key, { ...before, put: before.put + 1, found: before.found + (slip.found ? 1 : 0) });
}

function bySizeThenTorque(a: InsertionTally, b: InsertionTally): number {
	return (
		a.sizeCrankDeg - b.sizeCrankDeg ||
		a.place.localeCompare(b.place) ||
		(a.torqueFromNm ?? -1) - (b.torqueFromNm ?? -1) ||
		Number(b.observed) - Number(a.observed)
	);
}
