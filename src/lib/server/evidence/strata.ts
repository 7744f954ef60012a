import type { EvidenceRide } from './buildEvidence';
import { countedSlips, type CountedUnit } from './countedSlips';

/**
 * Lower edges of the torque groups in which builds are set against each other, as numbers of torque bins
 * (below 8, 8 to 16, 16 to 25, 25 to 40, from 40 Nm); torque not known is a group of its own. Wider than
 * the bins that are shown, so that a group of the old build holds kilometres enough for a rate of its own.
 * Fixed before slips are known. (Common practice, no source.)
 */
export const TORQUE_GROUP_BINS = [0, 2, 4, 6, 8] as const;

/** Lower edges of the age groups, metres since the build was fitted; the last is open upwards. */
export const AGE_EDGES_M = [
	0, 100_000, 250_000, 500_000, 1_000_000, 2_000_000, 4_000_000, 8_000_000
] as const;

/** Slips and observed distance at one torque and age. */
export interface Stratum {
	/** number of the torque group; -1 = torque not known */
	readonly torqueGroup: number;
	/** number of the age group */
	readonly ageGroup: number;
	readonly slips: number;
	readonly observedM: number;
}

/**
 * Files counted slips and observed distance by torque and age. A ride that runs over the edge of an age
 * group gives each group its share of the ride's observed distance at each torque; a slip is filed by its
 * own age and torque.
 *
 * @param rides of one build
 * @returns groups with observed distance or slips, in order of torque, then age
 */
export function strata(
	rides: readonly EvidenceRide[],
	unit: CountedUnit,
	unreviewed: 'slip' | 'none'
): Stratum[] {
	const cells = new Map<number, { slips: number; observedM: number }>();
	const add = (torqueBin: number, ageGroup: number, slips: number, observedM: number) => {
		const key = (torqueGroupOf(torqueBin) + 1) * AGE_EDGES_M.length + ageGroup;
		const cell = cells.get(key) ?? { slips: 0, observedM: 0 };
		cells.set(key, { slips: cell.slips + slips, observedM: cell.observedM + observedM });
	};
	for (const ride of rides) {
		for (const { ageGroup, share } of ageShares(ride))
			for (const { torqueBin, observedM } of ride.cells)
				if (observedM > 0) add(torqueBin, ageGroup, 0, observedM * share);
		for (const slip of countedSlips(ride.events, unit, unreviewed))
			add(slip.torqueBin, ageGroupOf(ride.ageFromM + slip.atM), 1, 0);
	}
	return [...cells]
		.sort(([a], [b]) => a - b)
		.map(([key, cell]) => ({
			torqueGroup: Math.floor(key / AGE_EDGES_M.length) - 1,
			ageGroup: key % AGE_EDGES_M.length,
			...cell
		}));
}

export function torqueGroupOf(torqueBin: number): number {
	return TORQUE_GROUP_BINS.findLastIndex((from) => torqueBin >= from);
}

export function ageGroupOf(ageM: number): number {
	return AGE_EDGES_M.findLastIndex((from) => ageM >= from);
}

/** How the observed distance of a ride divides over age groups; shares add up to 1. */
function ageShares(ride: EvidenceRide): { ageGroup: number; share: number }[] {
	const first = ageGroupOf(ride.ageFromM);
	if (first === ageGroupOf(ride.ageFromM + ride.totalM)) return [{ ageGroup: first, share: 1 }];
	const metres = new Map<number, number>();
	let all = 0;
	for (const { fromM, toM } of ride.observed) {
		const [from, to] = [ride.ageFromM + fromM, ride.ageFromM + toM];
		for (let group = ageGroupOf(from); group < AGE_EDGES_M.length && AGE_EDGES_M[group] < to; group++) {
			const part = Math.min(to, AGE_EDGES_M[group + 1] ?? Infinity) - Math.max(from, AGE_EDGES_M[group]);
			metres.set(group, (metres.get(group) ?? 0) + part);
			all += part;
		}
	}
	if (all === 0) return [{ ageGroup: first, share: 1 }];
	return [...metres].map(([ageGroup, part]) => ({ ageGroup, share: part / all }));
}
