import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import type { RecordingKind } from '$lib/ride/recordingKind';
import { listWheelRecords } from '../hardware/wheels';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { allRideFacts, type RideFacts } from '../rides/rideFacts';
import type { FalseAlarmRate, FalseAlarmsView } from './falseAlarmViews';
import { CONFIDENCE } from './countView';
import { eventTallies, NO_EVENTS, type EventTally } from './eventTallies';

/** false alarms are given per 1000 observed km */
const UNIT_M = 1_000_000;

/**
 * How often the tool reports a slip where there is none: events of the rate's kind on wheels that a person
 * called known to be good. Verdicts change nothing here, since the rates of other builds count what nobody
 * has reviewed. Pooled, and by what the files tell of the device. A ride needs no build for it.
 *
 * @returns no wheels and a rate of null until there is such a wheel with observed distance
 */
export function falseAlarms(ledger: Ledger): FalseAlarmsView {
	const wheels = listWheelRecords(ledger).filter(({ knownGood }) => knownGood === 1);
	const ids = new Set(wheels.map(({ id }) => id));
	const rides = allRideFacts(ledger).filter(
		(ride) => ride.wheelId !== null && ids.has(ride.wheelId) && isEvidence(ride)
	);
	const tallies = eventTallies(ledger);
	const kinds = recordingKinds(ledger);
	const byKind = new Map<string, { kind: RecordingKind; rides: RideFacts[] }>();
	for (const ride of rides) {
		const kind = kinds.get(ride.id);
		if (!kind) continue;
		const key = `${kind.speedFrom}|${kind.rhythm}`;
		if (!byKind.has(key)) byKind.set(key, { kind, rides: [] });
		byKind.get(key)!.rides.push(ride);
	}
	return {
		wheels: wheels.map(({ id, name }) => ({ id, name })),
		pooled: rateOf(rides, tallies),
		kinds: [...byKind.values()]
			.map(({ kind, rides: ofKind }) => ({ ...kind, ...rateOf(ofKind, tallies) }))
			.sort((a, b) => b.observedM - a.observedM)
	};
}

/** Counted rides, and those that only lack a build: which build does not matter on a wheel that is good. */
function isEvidence({ standing, twinId, twinDecision }: RideFacts): boolean {
	if (standing.state === 'counted') return true;
	const sameRide = twinId !== null && twinDecision !== 'different ride';
	return standing.state === 'needs an answer' && !sameRide;
}

function rateOf(
	rides: readonly RideFacts[],
	tallies: Pick<ReadonlyMap<number, EventTally>, 'get'>
): FalseAlarmRate {
	const of = rides.map(({ id }) => tallies.get(id) ?? NO_EVENTS);
	const confirmed = of.reduce((sum, tally) => sum + tally.confirmed, 0);
	const others = of.reduce((sum, tally) => sum + tally.unreviewed + tally.rejected, 0);
	const observedM = rides.reduce((sum, ride) => sum + ride.observedM, 0);
	const events = confirmed + others;
	const { rate, lower, upper } = poissonRateLimits(events, observedM / UNIT_M, CONFIDENCE);
	return {
		events,
		confirmed,
		rides: rides.length,
		observedM,
		ratePerThousandKm: Number.isFinite(rate) ? rate : null,
		lowerPerThousandKm: lower,
		upperPerThousandKm: Number.isFinite(upper) ? upper : null,
		confidence: CONFIDENCE
	};
}

function recordingKinds(ledger: Ledger): Map<number, RecordingKind> {
	const rows = ledger.database
		.prepare<[number], RecordingKind & { rideId: number }>(
			`SELECT ride_id AS rideId, speed_from AS speedFrom, rhythm FROM recording_kind
			WHERE version = ? AND ride_id IN
				(SELECT r.id FROM ride r JOIN wheel w ON w.id = r.wheel_id WHERE w.known_good = 1)`
		)
		.all(currentVersion(ledger));
	return new Map(rows.map(({ rideId, ...kind }) => [rideId, kind]));
}
