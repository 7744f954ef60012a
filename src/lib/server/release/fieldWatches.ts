import type { NumberWords, ReleaseCriteria } from '$lib/release/criteria';
import { fieldWatch, type FieldEvidence, type FieldWatch } from '$lib/release/fieldWatch';
import { evidenceOfBuilds } from '../evidence/buildEvidence';
import { incidentsOfBuild } from '../hardware/incidentsView';
import { fromInstant, toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import type { Instant } from '../views';
import { largestConfirmed } from './largestConfirmed';
import { slipPath } from './slipPath';

/** A released build and what the field says of its release. */
export interface WatchedRelease extends FieldWatch {
	readonly buildId: number;
	readonly build: string;
	readonly releasedAt: Instant;
	/** by which version of the criteria it was released */
	readonly criteriaVersion: number;
}

interface ReleaseRow {
	readonly decisionId: number;
	readonly buildId: number;
	readonly build: string;
	readonly atMs: number;
	readonly version: number;
	readonly criteria: string;
}

/**
 * Every released build with its watch, in the order in which they were released: rides that began and incidents that
 * happened after the release was signed, against the criteria that it was signed on.
 *
 * @param buildId only of this one
 */
export function fieldWatches(ledger: Ledger, words: NumberWords, buildId?: number): WatchedRelease[] {
	return releases(ledger)
		.filter((release) => buildId === undefined || release.buildId === buildId)
		.map((release) => ({
			buildId: release.buildId,
			build: release.build,
			releasedAt: toInstant(release.atMs),
			criteriaVersion: release.version,
			...fieldWatch(JSON.parse(release.criteria) as ReleaseCriteria, fieldOf(ledger, release), words)
		}));
}

/** the last release of each build that is released now; also one that was withdrawn again goes on being watched */
function releases(ledger: Ledger): ReleaseRow[] {
	return ledger.database
		.prepare<[], ReleaseRow>(
			`SELECT d.id AS decisionId, d.build_id AS buildId, b.name AS build, d.at_ms AS atMs, c.version, c.criteria
			FROM release_decision d JOIN build b ON b.id = d.build_id JOIN release_criteria c ON c.id = d.criteria_id
			WHERE d.decision = 'released' AND b.state IN ('released', 'withdrawn')
				AND d.id = (SELECT max(id) FROM release_decision l WHERE l.build_id = d.build_id AND l.decision = 'released')
			ORDER BY d.at_ms, d.id`
		)
		.all();
}

function fieldOf(ledger: Ledger, { decisionId, buildId, build, atMs }: ReleaseRow): FieldEvidence {
	return remember(ledger, `field since decision ${decisionId}`, () => {
		const rides = evidenceOfBuilds(ledger, [{ id: buildId, name: build }])[0].rides.filter(
			({ startMs }) => startMs >= atMs
		);
		const path = slipPath(rides);
		const reported = incidentsOfBuild(ledger, buildId).filter(
			({ at, counts }) => counts && fromInstant(at) >= atMs
		);
		return {
			rides: new Set(rides.map(({ rideId }) => rideId)).size,
			observedM: path.observedM,
			slipsAtObservedM: path.slipsAtM,
			confirmedAtObservedM: path.confirmedAtM,
			unreviewed: rides.reduce(
				(sum, { events }) => sum + events.filter(({ standing }) => standing === 'unreviewed').length,
				0
			),
			largestConfirmedCrankDeg: largestConfirmed(
				ledger,
				rides.map(({ rideId }) => rideId)
			),
			reported: reported.length,
			harmed: reported.filter(({ injured, severity }) => injured || severity === 'fell').length
		};
	});
}
