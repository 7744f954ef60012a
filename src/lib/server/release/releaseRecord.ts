import type { TestEvidence } from '$lib/release/criteria';
import type { ReleaseState } from '$lib/release/releaseState';
import { evidenceOfBuilds } from '../evidence/buildEvidence';
import { billView, torqueView } from '../hardware/billViews';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import type { CriteriaVersion } from './releaseCriteria';

/**
 * Everything that a decision about a build rests on, as plain data without names of people: what was asked
 * for, how it stands, the rides with the hashes of their files, their events and verdicts, the bill of parts.
 * The same ledger gives the same record; figures that are unbounded are null.
 */
export function releaseRecord(
	ledger: Ledger,
	build: { readonly id: number; readonly name: string },
	version: CriteriaVersion,
	evidence: TestEvidence,
	state: ReleaseState
): object {
	const [told] = evidenceOfBuilds(ledger, [build]);
	const rides = told.rides.filter(({ startMs }) => startMs >= version.setMs);
	const files = fileHashes(ledger);
	return {
		...besideRides(ledger, build, version, evidence, state),
		...(bounded({
			rides: rides.map((ride) => ({
				sourceSha256: files.get(ride.rideId) ?? null,
				startedAt: toInstant(ride.startMs),
				wheel: ride.wheelId,
				wet: ride.wet,
				ageFromM: ride.ageFromM,
				totalM: ride.totalM,
				observedM: ride.observedM,
				slips: ride.events.map(({ startS, overrunCrankDeg, torqueBin, standing }) => ({
					startS,
					overrunCrankDeg,
					torqueBin,
					standing
				}))
			}))
		}) as object)
	};
}

/** What the record holds beside the rides: it may change while the evidence stands. */
export function besideRides(
	ledger: Ledger,
	build: { readonly id: number; readonly name: string },
	version: CriteriaVersion,
	evidence: TestEvidence,
	state: ReleaseState
): object {
	return bounded({
		build: { name: build.name, bill: bill(ledger, build.id), torques: torques(ledger, build.id) },
		analysisVersion: currentVersion(ledger),
		criteria: {
			version: version.version,
			setAt: toInstant(version.setMs),
			referenceBuild: version.referenceBuildId,
			...version.criteria
		},
		states: state.criteria.map(({ name, state: how }) => ({ name, state: how })),
		state: state.state,
		evidence
	}) as object;
}

function bill(ledger: Ledger, buildId: number) {
	return billView(ledger, buildId).map(({ part, quantity, serial }) => ({
		part: part.mark,
		quantity,
		serial
	}));
}

function torques(ledger: Ledger, buildId: number) {
	return torqueView(ledger, buildId).map(({ joint, wantedNm, recordedNm }) => ({
		joint,
		wantedNm,
		recordedNm
	}));
}

function fileHashes(ledger: Ledger): ReadonlyMap<number, string> {
	const rows = ledger.database
		.prepare<[], { id: number; sha256: string }>('SELECT id, sha256 FROM ride')
		.all();
	return new Map(rows.map(({ id, sha256 }) => [id, sha256]));
}

/** JSON has no Infinity: what has no bound is null there. */
export function bounded(value: unknown): unknown {
	if (typeof value === 'number') return Number.isFinite(value) ? value : null;
	if (Array.isArray(value)) return value.map(bounded);
	if (value && typeof value === 'object')
		return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, bounded(member)]));
	return value;
}
