import type { NumberWords, TestEvidence } from '$lib/release/criteria';
import { releaseState, type ReleaseState } from '$lib/release/releaseState';
import { planLines, sequentialCourse, type SequentialCourse } from '$lib/release/sequentialCourse';
import { evidenceOfBuilds } from '../evidence/buildEvidence';
import { findBuild, listBuildRecords, type BuildRecord } from '../hardware/builds';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { currentVersion } from '../queue/analysisVersions';
import { listCriteria, type CriteriaVersion } from './releaseCriteria';
import { listDecisions, sealRecord, type ReleaseDecision } from './releaseDecisions';
import { besideRides, releaseRecord } from './releaseRecord';
import { notFoundOf } from './notFoundOf';
import { testEvidence } from './testEvidence';

/** How a build stands against its criteria, everything that was decided about it, and what there is to plan with. */
export interface ReleaseView {
	readonly build: Pick<BuildRecord, 'id' | 'name' | 'state' | 'example'>;
	readonly analysisVersion: number;
	/** the newest first; the first stands */
	readonly versions: readonly CriteriaVersion[];
	readonly reference: { readonly id: number; readonly name: string } | null;
	/** null before criteria were set */
	readonly standing: {
		readonly state: ReleaseState;
		readonly evidence: TestEvidence;
		/** hash of the record that would be signed now */
		readonly recordSha256: string;
		/** null under a fixed plan */
		readonly course: (SequentialCourse & CourseLines) | null;
		/** null while no event of the test is rejected */
		readonly ifRejectedCounted: IfRejectedCounted | null;
	} | null;
	readonly decisions: readonly ReleaseDecision[];
	readonly others: readonly { readonly id: number; readonly name: string }[];
	/** how many builds of this ledger have or had criteria, and how many versions of them: many tries flatter the best */
	readonly tried: { readonly builds: number; readonly plans: number };
	readonly pace: Pace;
}

/** Of all rides of this build so far: for the planner. */
export interface Pace {
	/** 0 = not known */
	readonly observedMPerWeek: number;
	readonly observedShare: number;
	/** so many slips may stand for one found, upper limit; null = not known */
	readonly slipsBehindOne: number | null;
	readonly wheels: number;
}

/** What the criteria would say if every rejected event of the test were a slip. */
export interface IfRejectedCounted {
	readonly rejected: number;
	readonly state: ReleaseState['state'];
	/** criteria that would stand otherwise */
	readonly otherwise: ReleaseState['criteria'];
}

export interface CourseLines {
	/** per 1000 observed km */
	readonly slopePerThousandKm: number;
	readonly passIntercept: number;
	readonly failIntercept: number;
	readonly slipsAtM: readonly number[];
	readonly observedM: number;
	readonly longestObservedM: number;
	readonly allowedAtEnd: number;
}

const WEEK_MS = 7 * 86_400_000;

/** @throws LedgerRefusal not-found */
export function releaseView(ledger: Ledger, buildId: number, words: NumberWords): ReleaseView {
	const { id, name, state, example } = findBuild(ledger, buildId);
	const build = { id, name, state, example };
	const versions = listCriteria(ledger, buildId);
	const others = listBuildRecords(ledger).filter((other) => other.id !== buildId);
	const [current] = versions;
	const reference = others.find((other) => other.id === current?.referenceBuildId);
	return {
		build,
		analysisVersion: currentVersion(ledger),
		versions,
		reference: reference ? { id: reference.id, name: reference.name } : null,
		standing: current ? standingOf(ledger, build, current, words) : null,
		decisions: listDecisions(ledger, buildId),
		others: others.map((other) => ({ id: other.id, name: other.name })),
		tried: triedPlans(ledger),
		pace: paceOf(ledger, build)
	};
}

/** The record that would be signed now, with whether every criterion holds; null before criteria were set. */
export function recordToSign(
	ledger: Ledger,
	buildId: number,
	words: NumberWords
): { record: object; allHold: boolean } | null {
	const build = findBuild(ledger, buildId);
	const [current] = listCriteria(ledger, buildId);
	if (!current) return null;
	const evidence = testEvidence(ledger, build, current);
	const state = releaseState(current.criteria, evidence, words);
	return {
		record: releaseRecord(ledger, build, current, evidence, state),
		allHold: state.state === 'all hold'
	};
}

function standingOf(
	ledger: Ledger,
	build: { id: number; name: string },
	current: CriteriaVersion,
	words: NumberWords
): ReleaseView['standing'] {
	const evidence = testEvidence(ledger, build, current);
	const state = releaseState(current.criteria, evidence, words);
	return {
		state,
		evidence,
		recordSha256: hashToSign(ledger, build, current, evidence, state),
		course: courseOf(current, evidence),
		ifRejectedCounted: ifRejectedCounted(ledger, build, current, state, words)
	};
}

function ifRejectedCounted(
	ledger: Ledger,
	build: { id: number; name: string },
	current: CriteriaVersion,
	now: ReleaseState,
	words: NumberWords
): IfRejectedCounted | null {
	const [{ rides }] = evidenceOfBuilds(ledger, [build]);
	const rejected = rides
		.filter(({ startMs }) => startMs >= current.setMs)
		.flatMap(({ events }) => events)
		.filter(({ standing }) => standing === 'rejected').length;
	if (rejected === 0) return null;
	const then = releaseState(current.criteria, testEvidence(ledger, build, current, 'slips'), words);
	const before = new Map(now.criteria.map(({ name, state }) => [name, state]));
	return {
		rejected,
		state: then.state,
		otherwise: then.criteria.filter(({ name, state }) => before.get(name) !== state)
	};
}

/** Hashing thousands of rides takes longer than all else: it is done once for the same evidence and hardware. */
function hashToSign(
	ledger: Ledger,
	build: { id: number; name: string },
	current: CriteriaVersion,
	evidence: TestEvidence,
	state: ReleaseState
): string {
	const beside = sealRecord(besideRides(ledger, build, current, evidence, state)).sha256;
	return remember(
		ledger,
		`record of criteria ${current.id} with ${beside}`,
		() => sealRecord(releaseRecord(ledger, build, current, evidence, state)).sha256
	);
}

function courseOf({ criteria }: CriteriaVersion, evidence: TestEvidence) {
	if (criteria.plan.kind !== 'sequential') return null;
	const lines = planLines(criteria, criteria.plan);
	if (!lines) return null;
	const observedM = evidence.wheels.reduce((sum, wheel) => sum + wheel.observedM, 0);
	return {
		...sequentialCourse(lines, evidence.slipsAtObservedM, observedM),
		slopePerThousandKm: lines.slope,
		passIntercept: lines.passIntercept,
		failIntercept: lines.failIntercept,
		allowedAtEnd: lines.allowedAtEnd,
		slipsAtM: evidence.slipsAtObservedM,
		observedM,
		longestObservedM: criteria.plan.longestObservedM
	};
}

function triedPlans(ledger: Ledger): ReleaseView['tried'] {
	return ledger.database
		.prepare<[], { builds: number; plans: number }>(
			'SELECT count(DISTINCT build_id) AS builds, count(*) AS plans FROM release_criteria'
		)
		.get()!;
}

function paceOf(ledger: Ledger, build: { id: number; name: string }): Pace {
	const [{ rides, wheels }] = evidenceOfBuilds(ledger, [build]);
	const observedM = rides.reduce((sum, ride) => sum + ride.observedM, 0);
	const totalM = rides.reduce((sum, ride) => sum + ride.totalM, 0);
	const starts = rides.map(({ startMs }) => startMs);
	const spanMs = rides.length > 0 ? Math.max(...starts) - Math.min(...starts) : 0;
	return {
		observedMPerWeek: spanMs > 0 ? observedM / Math.max(1, spanMs / WEEK_MS) : 0,
		observedShare: totalM > 0 ? observedM / totalM : 0,
		slipsBehindOne: notFoundOf(ledger, rides).factor?.upper ?? null,
		wheels: wheels.length
	};
}
