import type { Ledger } from '../ledger/openLedger';
import { countsFor } from '../rates/programmeRows';
import { partsOfRides } from './evidenceParts';
import { allRideFacts, type RideFacts } from './rideFacts';

/** Of a ride what lists and sums over all rides look at: ten thousand small things are read in no time. */
export interface RideBrief {
	readonly id: number;
	readonly wheelId: number | null;
	readonly totalM: number;
	readonly counted: boolean;
	/** somebody has to answer something */
	readonly needs: boolean;
	/** the builds that it was ridden on; split rides have several */
	readonly buildIds: readonly number[];
	/** what it, or its parts, count for */
	readonly evidence: readonly { readonly buildId: number; readonly totalM: number }[];
}

interface Known {
	readonly rides: readonly RideFacts[];
	readonly briefs: readonly RideBrief[];
}

const known = new WeakMap<Ledger, Known>();

/** One for each ride of `allRideFacts`, at the same place. Made anew only for rides that were read again. */
export function rideBriefs(ledger: Ledger): readonly RideBrief[] {
	const rides = allRideFacts(ledger);
	const before = known.get(ledger);
	if (before?.rides === rides) return before.briefs;
	const briefs = before ? briefsFrom(before, rides) : rides.map(briefOf);
	known.set(ledger, { rides, briefs });
	return briefs;
}

/** Both lists are in order of start and number, and rides that were not read again are the same objects in both. */
function briefsFrom(before: Known, rides: readonly RideFacts[]): RideBrief[] {
	let place = 0;
	return rides.map((ride) => {
		while (place < before.rides.length && before.rides[place] !== ride && isUpTo(before.rides[place], ride))
			place++;
		return before.rides[place] === ride ? before.briefs[place++] : briefOf(ride);
	});
}

function isUpTo(a: RideFacts, b: RideFacts): boolean {
	return a.startMs < b.startMs || (a.startMs === b.startMs && a.id <= b.id);
}

function briefOf(ride: RideFacts): RideBrief {
	const builds = [ride.build, ...ride.parts.map(({ build }) => build)];
	return {
		id: ride.id,
		wheelId: ride.wheelId,
		totalM: ride.totalM,
		counted: ride.standing.state === 'counted',
		needs: ride.standing.needs.length > 0,
		buildIds: builds.flatMap((build) => (build.kind === 'build' ? [build.buildId] : [])),
		evidence: partsOfRides([ride]).flatMap((part) =>
			part.buildId !== null && countsFor(part, part.buildId)
				? [{ buildId: part.buildId, totalM: part.totalM }]
				: []
		)
	};
}
