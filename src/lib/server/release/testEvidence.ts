import type { ReleaseCriteria, TestEvidence } from '$lib/release/criteria';
import { HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';
import { evidenceOfBuilds, type BuildEvidence, type EvidenceRide } from '../evidence/buildEvidence';
import { setAgainst } from '../evidence/setAgainst';
import { benchEvidence } from '../hardware/benchChecks';
import { incidentsOfBuild } from '../hardware/incidentsView';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { openMarks } from '../marks/openMarks';
import { buildSheetGaps } from './buildSheetGaps';
import { designOfBuild } from './designOfBuild';
import { largestConfirmed } from './largestConfirmed';
import type { CriteriaVersion } from './releaseCriteria';
import { notFoundOf } from './notFoundOf';
import { slipPath, type SlipPath } from './slipPath';
import { wearOfBuild } from './wearOfBuild';

/** What the rides have shown; it stands as long as the evidence does. Hardware is looked at each time. */
type RiddenEvidence = Omit<TestEvidence, 'wear' | 'design' | 'benchCheck' | 'missingOnBuildSheet'>;

/**
 * What a build has shown since its criteria were set: rides that began before do not count. Hardware,
 * inspections and incidents are as they stand now.
 *
 * @param rejected what events that a person rejected are taken for: "slips" answers what the decision would be if
 *   every rejection were wrong
 */
export function testEvidence(
	ledger: Ledger,
	build: { readonly id: number; readonly name: string },
	version: CriteriaVersion,
	rejected: 'none' | 'slips' = 'none'
): TestEvidence {
	const [evidence] = evidenceOfBuilds(ledger, [build]);
	return {
		...remember(ledger, `ridden for criteria ${version.id}, rejected: ${rejected}`, () =>
			riddenEvidence(ledger, evidence, version, rejected)
		),
		wear: wearOfBuild(ledger, build.id, evidence.wheels),
		design: designOfBuild(ledger, build.id),
		benchCheck: ({ passed: 'recorded', override: 'overridden', failed: null } as const)[
			benchEvidence(ledger, build.id) ?? 'failed'
		],
		missingOnBuildSheet: buildSheetGaps(ledger, build.id)
	};
}

function riddenEvidence(
	ledger: Ledger,
	evidence: BuildEvidence,
	{ setMs, criteria, referenceBuildId }: CriteriaVersion,
	rejected: 'none' | 'slips'
): RiddenEvidence {
	const since = evidence.rides.filter(({ startMs }) => startMs >= setMs);
	const rides = rejected === 'slips' ? since.map(withRejectedCounted) : since;
	const reference = referenceBuildId === null ? null : { id: referenceBuildId, name: '' };
	const marks = openMarks(ledger);
	const path = slipPath(rides);
	const incidents = incidentsOfBuild(ledger, evidence.buildId);
	const sum = (pick: (ride: EvidenceRide) => number) => rides.reduce((total, ride) => total + pick(ride), 0);
	return {
		wheels: evidence.wheels.map(({ id, name }) => ({
			name,
			observedM: sum((ride) => (ride.wheelId === id ? ride.observedM : 0))
		})),
		riders: new Set(rides.flatMap(({ riderId }) => (riderId === null ? [] : [riderId]))).size,
		confirmed: path.confirmedAtM.length,
		unreviewed: sum(({ events }) => events.filter(({ standing }) => standing === 'unreviewed').length),
		slipsAtObservedM: path.slipsAtM,
		confirmedAtObservedM: path.confirmedAtM,
		lastThird: lastThirdOf(path),
		notFound: notFoundOf(ledger, rides),
		expected: reference && expectedOf(rides, evidenceOfBuilds(ledger, [reference])[0]),
		observedMAboveHardTorque: sum((ride) => aboveTorque(ride, criteria)),
		observedMWet: sum((ride) => (ride.wet === true ? ride.observedM : 0)),
		observedMDry: sum((ride) => (ride.wet === false ? ride.observedM : 0)),
		openMarks: [...new Set(rides.map(({ rideId }) => rideId))].reduce(
			(total, rideId) => total + (marks.get(rideId) ?? 0),
			0
		),
		openIncidents: incidents.filter(({ closing }) => closing === null).length,
		injuries: incidents.filter(({ counts, severity, injured }) => counts && (injured || severity === 'fell'))
			.length,
		largestConfirmedCrankDeg: largestConfirmed(
			ledger,
			rides.map(({ rideId }) => rideId),
			rejected
		)
	};
}

function withRejectedCounted(ride: EvidenceRide): EvidenceRide {
	const events = ride.events.map((event) =>
		event.standing === 'rejected' ? { ...event, standing: 'confirmed' as const } : event
	);
	return { ...ride, events };
}

/** In the bins that lie above the torque as a whole: a bin that holds it counts for nothing. */
function aboveTorque({ cells }: EvidenceRide, { hardTorqueNm }: ReleaseCriteria): number {
	return cells.reduce(
		(total, { torqueBin, observedM }) =>
			torqueBin >= 0 && HUB_TORQUE_EDGES_NM[torqueBin] >= hardTorqueNm ? total + observedM : total,
		0
	);
}

function lastThirdOf({ slipsAtM, confirmedAtM, observedM }: SlipPath): TestEvidence['lastThird'] {
	const fromM = (2 / 3) * observedM;
	const within = (atM: readonly number[]) => atM.filter((metres) => metres >= fromM).length;
	return { slips: within(slipsAtM), confirmed: within(confirmedAtM), observedM: observedM - fromM };
}

function expectedOf(rides: readonly EvidenceRide[], reference: BuildEvidence): TestEvidence['expected'] {
	const { upper, comparedM, notComparedM, confidence } = setAgainst(
		rides,
		reference.rides,
		'episodes',
		'none'
	).expected;
	const observedM = comparedM + notComparedM;
	return observedM > 0
		? { ratioUpper: upper ?? Infinity, confidence, comparableShare: comparedM / observedM }
		: null;
}
