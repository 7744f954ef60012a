import { HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';
import { countedAgainstExpected, type Clustering } from '$lib/reliability/countedAgainstExpected';
import { CONFIDENCE } from '../rates/countView';
import { AGE_EDGES_M, TORQUE_GROUP_BINS, type Stratum } from './strata';

/** A group of the old build with less observed distance than this has no rate to expect by. (No source.) */
export const LEAST_REFERENCE_M = 2_000;

/** How many slips the old build would have had on the new build's kilometres, at the same torque and age. */
export interface ExpectedSlips {
	readonly counted: number;
	readonly expected: number;
	readonly expectedSd: number;
	/** counted / expected; null when both are 0 or only the expected is */
	readonly ratio: number | null;
	readonly lower: number;
	/** null = no upper limit can be given */
	readonly upper: number | null;
	readonly confidence: number;
	/** observed metres of the new build at a torque and age that the old build knows */
	readonly comparedM: number;
	readonly notComparedM: number;
	/** slips of the new build there: they are in no ratio, but nobody may overlook them */
	readonly slipsNotCompared: number;
	/** the largest parts that could not be compared, in words */
	readonly leftOut: readonly {
		readonly torque: string;
		readonly ageFromM: number;
		readonly ageToM: number | null;
		readonly observedM: number;
	}[];
	readonly groups: readonly {
		readonly torque: string;
		readonly ageFromM: number;
		readonly ageToM: number | null;
		readonly observedM: number;
		readonly counted: number;
		readonly expected: number;
		readonly referenceSlips: number;
		readonly referenceObservedM: number;
	}[];
}

/**
 * Sets the slips of a build against those that the reference would have had on the same observed distance,
 * group by group of torque and age (the groups are fixed: strata.ts). What the reference never rode, or
 * hardly, is left out and shown: kilometres at high torque of the old build cannot vouch for a new build
 * that was ridden gently, and the other way round.
 *
 * @param build strata of the build under test; @param reference those of the build that it replaces
 * @param clustering variance / mean of the counts where slips come in bursts
 */
export function expectedSlips(
	build: readonly Stratum[],
	reference: readonly Stratum[],
	clustering: Clustering = {}
): ExpectedSlips {
	const known = new Map(
		reference.filter(({ observedM }) => observedM >= LEAST_REFERENCE_M).map((group) => [keyOf(group), group])
	);
	// a slip can carry a torque at which no second was observed: it has no exposure to be compared on
	const compared = build.filter((group) => group.observedM > 0 && known.has(keyOf(group)));
	const others = build.filter((group) => !compared.includes(group));
	const sum = (groups: readonly Stratum[], pick: (group: Stratum) => number) =>
		groups.reduce((total, group) => total + pick(group), 0);
	const result = countedAgainstExpected(
		compared.map((group) => {
			const old = known.get(keyOf(group))!;
			return {
				referenceCount: old.slips,
				referenceExposure: old.observedM,
				exposure: group.observedM,
				count: group.slips
			};
		}),
		CONFIDENCE,
		clustering
	);
	return {
		counted: result.counted,
		expected: result.expected,
		expectedSd: result.expectedSd,
		ratio: Number.isFinite(result.ratio) ? result.ratio : null,
		lower: result.lower,
		upper: Number.isFinite(result.upper) ? result.upper : null,
		confidence: CONFIDENCE,
		comparedM: sum(compared, ({ observedM }) => observedM),
		notComparedM: sum(others, ({ observedM }) => observedM),
		slipsNotCompared: sum(others, ({ slips }) => slips),
		leftOut: [...others]
			.sort((a, b) => b.observedM - a.observedM)
			.slice(0, 3)
			.map((group) => ({
				torque: torqueWords(group.torqueGroup),
				ageFromM: AGE_EDGES_M[group.ageGroup],
				ageToM: AGE_EDGES_M[group.ageGroup + 1] ?? null,
				observedM: group.observedM
			})),
		groups: compared.map((group) => {
			const old = known.get(keyOf(group))!;
			return {
				torque: torqueWords(group.torqueGroup),
				ageFromM: AGE_EDGES_M[group.ageGroup],
				ageToM: AGE_EDGES_M[group.ageGroup + 1] ?? null,
				observedM: group.observedM,
				counted: group.slips,
				expected: (old.slips * group.observedM) / old.observedM,
				referenceSlips: old.slips,
				referenceObservedM: old.observedM
			};
		})
	};
}

function keyOf({ torqueGroup, ageGroup }: Stratum): string {
	return `${torqueGroup}|${ageGroup}`;
}

/** "16 to 25 Nm" */
export function torqueWords(torqueGroup: number): string {
	if (torqueGroup < 0) return 'torque not known';
	const from = HUB_TORQUE_EDGES_NM[TORQUE_GROUP_BINS[torqueGroup]];
	const next = TORQUE_GROUP_BINS[torqueGroup + 1];
	return next === undefined ? `from ${from} Nm` : `${from} to ${HUB_TORQUE_EDGES_NM[next]} Nm`;
}
