import { borrowableDispersion } from '$lib/reliability/borrowableDispersion';
import type { UnitCount } from '$lib/reliability/unitCounts';

/** A build whose rides show by how much slips cluster, for one with too few slips to see it. */
export interface Lender {
	readonly name: string;
	/** variance / mean of its rides' counts */
	readonly dispersion: number;
}

/** What is known of a build's descent. */
export interface Descended {
	readonly id: number;
	readonly revisionOf: number | null;
	readonly copiedFrom: number | null;
}

/** What a build was revised or copied from, nearest first. */
export function buildsBefore<Build extends Descended>(builds: readonly Build[], buildId: number): Build[] {
	const before: Build[] = [];
	const find = (id: number | null) => builds.find((build) => build.id === id);
	for (let build = find(buildId); build;) {
		const next = find(build.revisionOf ?? build.copiedFrom);
		if (!next || next.id === buildId || before.includes(next)) break;
		before.push(next);
		build = next;
	}
	return before;
}

/**
 * The first of these builds with slips and rides enough to lend.
 *
 * @param candidates whoever comes first is asked first
 * @param unitsOf counts and exposures of a build's rides, the unreviewed counted
 */
export function firstLender<Build extends { readonly name: string }>(
	candidates: readonly Build[],
	unitsOf: (build: Build) => readonly UnitCount[]
): Lender | undefined {
	for (const build of candidates) {
		const dispersion = borrowableDispersion(unitsOf(build));
		if (dispersion !== undefined) return { name: build.name, dispersion };
	}
	return undefined;
}
