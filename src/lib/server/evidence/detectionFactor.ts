import { clusteredShare, type ClusteredShare, type TrialUnit } from '$lib/reliability/clusteredShare';
import { foundShareFactor } from '$lib/reliability/foundShareFactor';
import { CONFIDENCE } from '../rates/countView';
import type { Counting } from './binnedRates';
import type { EvidenceRide } from './buildEvidence';
import { countedSlips } from './countedSlips';
import type { FoundTally } from './foundTallies';
import { torqueGroupOf } from './strata';

/** How many slips stand for one that was found, of one build. */
export interface DetectionFactor {
	/** at least 1, with limits */
	readonly factor: number;
	readonly lower: number;
	readonly upper: number;
	readonly confidence: number;
	/** slips of the reference size and more put into observed stretches of its rides, and found again */
	readonly put: number;
	readonly found: number;
	readonly ridesTested: number;
	readonly rides: number;
}

/** a class of size and torque with fewer slips put in borrows from all torques, then from all sizes (no source) */
const LEAST_PUT = 20;
/** with fewer in all nothing can be corrected (no source) */
const LEAST_PUT_IN_ALL = 50;

/**
 * By how much the counts of a build are multiplied for slips that were there and not found, from slips of known size
 * put into its own rides on observed stretches. Each counted slip is taken at its own size and hub torque (sizes down
 * to the next smaller one that was put in); a ride weighs by its observed distance. Where nothing counts, a slip of the
 * reference size stands for all, at the torques at which the build was observed. Episodes are corrected like slips,
 * which is rather too much, since one found slip of several is enough.
 *
 * @returns null while too few slips were put in
 */
export function detectionFactor(
	rides: readonly EvidenceRide[],
	tallies: ReadonlyMap<number, readonly FoundTally[]>,
	{ unit, unreviewed }: Counting
): DetectionFactor | null {
	const tested = rides
		.filter(({ observedM }) => observedM > 0)
		.map((ride) => ({ ride, of: tallies.get(ride.rideId) ?? [] }))
		.filter(({ of }) => of.length > 0);
	const all = tested.flatMap(({ of }) => of);
	const sum = (pick: (tally: FoundTally) => number) => all.reduce((total, tally) => total + pick(tally), 0);
	const put = sum((tally) => tally.put);
	if (put < LEAST_PUT_IN_ALL) return null;
	const sizes = [...new Set(all.map(({ sizeCrankDeg }) => sizeCrankDeg))].sort((a, b) => a - b);
	const units = (of: (tally: FoundTally) => boolean): TrialUnit[] =>
		tested.map(({ ride, of: tallied }) => {
			const counted = (pick: (tally: FoundTally) => number, some = tallied) =>
				some.reduce((total, tally) => total + pick(tally), 0);
			const wanted = tallied.filter(of);
			return {
				weight: ride.observedM / counted((tally) => tally.put),
				tried: counted((tally) => tally.put, wanted),
				found: counted((tally) => tally.found, wanted)
			};
		});
	const shareOf = (size: number, torqueGroup: number): ClusteredShare => {
		const atTorque = clusteredShare(
			units((tally) => tally.sizeCrankDeg === size && tally.torqueGroup === torqueGroup)
		);
		if (atTorque.effectiveTrials >= LEAST_PUT) return atTorque;
		const atSize = clusteredShare(units((tally) => tally.sizeCrankDeg === size));
		return atSize.effectiveTrials >= LEAST_PUT ? atSize : clusteredShare(units(() => true));
	};
	const { value, lower, upper } = foundShareFactor(
		classesOf(rides, sizes, { unit, unreviewed }).map(({ size, torqueGroup, count }) => ({
			count,
			...shareOf(size, torqueGroup)
		})),
		CONFIDENCE
	);
	if (Number.isNaN(value)) return null;
	return {
		factor: value,
		lower,
		upper,
		confidence: CONFIDENCE,
		put,
		found: sum((tally) => tally.found),
		ridesTested: tested.length,
		rides: rides.length
	};
}

interface CountedClass {
	readonly size: number;
	readonly torqueGroup: number;
	readonly count: number;
}

function classesOf(
	rides: readonly EvidenceRide[],
	sizes: readonly number[],
	{ unit, unreviewed }: Counting
): CountedClass[] {
	const slips = rides.flatMap(({ events }) => countedSlips(events, unit, unreviewed));
	const keyed =
		slips.length > 0
			? slips.map(({ overrunCrankDeg, torqueBin }) => ({
					size: sizes.findLast((size) => size <= overrunCrankDeg) ?? sizes[0],
					torqueGroup: torqueGroupOf(torqueBin),
					count: 1
				}))
			: rides.flatMap(({ cells }) =>
					cells.map(({ torqueBin, observedM }) => ({
						size: sizes[0],
						torqueGroup: torqueGroupOf(torqueBin),
						count: observedM
					}))
				);
	const classes = new Map<string, CountedClass>();
	for (const one of keyed) {
		const key = `${one.size}|${one.torqueGroup}`;
		classes.set(key, { ...one, count: (classes.get(key)?.count ?? 0) + one.count });
	}
	return [...classes.values()];
}
