import type { NumberWords } from '$lib/release/criteria';
import {
	buildAgainstBuild,
	type BuildAgainstBuild,
	type BuildTold,
	type ComparisonPolicy
} from '../evidence/buildAgainstBuild';
import { findBuild, type BuildRecord } from '../hardware/builds';
import { differenceBetween, type BuildDifferenceView } from '../hardware/differenceView';
import { incidentCounts, NO_INCIDENTS, type IncidentCounts } from '../hardware/incidentsView';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { currentVersion } from '../queue/analysisVersions';
import { falseAlarms } from '../rates/falseAlarms';
import type { FalseAlarmsView } from '../rates/falseAlarmViews';
import type { Instant } from '../views';
import { reportRelease, type ReportRelease } from './reportRelease';
import { reportRides, type ReportRides } from './reportRides';
import { torqueCoverage, type TorqueCoverage } from '../evidence/torqueCoverage';

export interface ReportBuild {
	readonly id: number;
	readonly name: string;
	readonly description: string;
	readonly state: BuildRecord['state'];
	readonly revision: number;
	readonly stepHubDeg: number | null;
	readonly example: boolean;
	readonly totalM: number;
	readonly observedM: number;
	readonly rides: number;
	/** reported without a ride file: beside the rates, in none of them */
	readonly incidents: Pick<IncidentCounts, 'open' | 'counted' | 'apart' | 'harmed'>;
}

/** Everything that a report says about a build set against the one that it replaces. No people are in it. */
export interface ReportView {
	/** the only member that differs between two reports of the same ledger */
	readonly madeAt: Instant;
	readonly analysisVersion: number;
	/** one of the two is invented: so is what the report says */
	readonly example: boolean;
	readonly before: ReportBuild;
	readonly after: ReportBuild;
	readonly told: BuildAgainstBuild;
	readonly coverage: TorqueCoverage;
	readonly difference: BuildDifferenceView;
	readonly release: ReportRelease;
	readonly falseAlarms: FalseAlarmsView;
	readonly rides: ReportRides;
}

/**
 * The figures of the pages "Build against build" and "Release" put together to be printed: the same
 * functions, so that no figure of a report can differ from its page.
 *
 * @param words how the sentences of criteria write their figures
 * @throws LedgerRefusal not-found
 */
export function reportView(
	ledger: Ledger,
	beforeId: number,
	afterId: number,
	policy: ComparisonPolicy,
	words: NumberWords
): ReportView {
	const records = [findBuild(ledger, beforeId), findBuild(ledger, afterId)];
	const builds = records.map(({ id, name }) => ({ id, name }));
	const told = withoutRiders(buildAgainstBuild(ledger, builds, policy));
	const rides = remember(ledger, `rides of the report on ${JSON.stringify(builds)}`, () =>
		reportRides(ledger, builds)
	);
	const incidents = incidentCounts(ledger);
	const [before, after] = records.map((record) =>
		toBuild(record, rides, incidents.get(record.id) ?? NO_INCIDENTS)
	);
	return {
		madeAt: toInstant(ledger.now()),
		analysisVersion: currentVersion(ledger),
		example: before.example || after.example,
		before,
		after,
		told,
		coverage: torqueCoverage(told.builds[0], told.builds[1]),
		difference: differenceBetween(ledger, beforeId, afterId),
		release: reportRelease(ledger, afterId, words),
		falseAlarms: falseAlarms(ledger),
		rides
	};
}

function toBuild(build: BuildRecord, { counted }: ReportRides, incidents: IncidentCounts): ReportBuild {
	const rides = counted.filter((ride) => ride.build === build.name);
	return {
		id: build.id,
		name: build.name,
		description: build.description,
		state: build.state,
		revision: build.revision,
		stepHubDeg: build.stepHubDeg,
		example: build.example === 1,
		totalM: rides.reduce((sum, { totalM }) => sum + totalM, 0),
		observedM: rides.reduce((sum, { observedM }) => sum + observedM, 0),
		// a split ride is there once a part
		rides: new Set(rides.map(({ sha256 }) => sha256)).size,
		incidents: {
			open: incidents.open,
			counted: incidents.counted,
			apart: incidents.apart,
			harmed: incidents.harmed
		}
	};
}

/** Riders are asked about on the page of the workshop; on paper that goes to others they are a number. */
function withoutRiders(told: BuildAgainstBuild): BuildAgainstBuild {
	return {
		...told,
		builds: told.builds.map((build): BuildTold => ({
			...build,
			dependsOn: {
				...build.dependsOn,
				referenceRider: null,
				factors: build.dependsOn.factors.filter(({ factor }) => factor !== 'rider')
			}
		}))
	};
}
