import { listBuildRecords } from '../../hardware/builds';
import { listPeriods } from '../../hardware/periodRows';
import { listWheelRecords } from '../../hardware/wheels';
import type { Ledger } from '../../ledger/openLedger';
import { currentVersion } from '../../queue/analysisVersions';
import { allRideFacts, type RideFacts } from '../rideFacts';
import { bikeOffer } from './bikeOffer';
import { handedInBy } from './handedInBy';
import type { QuestionName } from './questionList';
import { shortDate } from './shortDate';
import { wheelsOnBikes } from './wheelOnBike';

/** The most likely answer, and why. */
export interface Offer {
	/** as the form sends it */
	readonly value: string;
	/** goes on after "because" */
	readonly reason: string;
	/** the recording or the ledger itself speaks for it: ticked beforehand; else a person has to tick it */
	readonly sure: boolean;
}

export type Offers = (ride: RideFacts) => Offer | null;

/** The most likely answer to a question for each ride; null where nothing speaks for one. */
export function offersFor(ledger: Ledger, question: QuestionName): Offers {
	const before = rideBefore(ledger);
	switch (question) {
		case 'wheel':
			return wheelOffer(ledger, before);
		case 'build':
			return (ride) => nearestBuild(ledger, ride);
		case 'change':
			return () => ({ value: 'split', sure: false, reason: 'each part then counts for its own build' });
		case 'twin':
			return () => ({
				value: 'same recording',
				sure: false,
				reason: 'speed and cadence agree nearly everywhere'
			});
		case 'bike':
			return bikeOffer(ledger);
		case 'rider':
			return handedInBy(ledger);
		case 'lapsMeanSlips':
			return (ride) =>
				asBefore(
					before(ride, 'riderId', ({ lapsMeanSlips }) => lapsMeanSlips),
					yesNo
				);
		case 'wet':
			return (ride) => sameDay(ledger, ride);
		case 'surface':
			return (ride) =>
				asBefore(
					before(ride, 'wheelId', ({ surface }) => surface),
					String
				);
		case 'outdoors':
			return (ride) =>
				hasPositions(ledger, ride) ? { value: 'no', sure: true, reason: 'positions were recorded' } : null;
		case 'laps':
		case 'motor':
			return () => null;
	}
}

const yesNo = (value: unknown) => (value === 1 ? 'yes' : 'no');

type Before = <Value>(
	ride: RideFacts,
	same: 'riderId' | 'wheelId',
	read: (ride: RideFacts) => Value | null
) => { value: Value; whose: string } | null;

/** What was said of the ride before by the same rider, or on the same wheel. */
function rideBefore(ledger: Ledger): Before {
	const rides = allRideFacts(ledger);
	return (ride, same, read) => {
		if (ride[same] === null) return null;
		const found = rides.findLast(
			(other) =>
				other.startMs < ride.startMs &&
				other[same] === ride[same] &&
				other.withdrawnReason === null &&
				read(other) !== null
		);
		if (!found) return null;
		const whose = same === 'riderId' ? `by ${found.riderCode}` : 'on this wheel';
		return { value: read(found)!, whose: `the ride before ${whose} (${shortDate(ledger, found.startMs)})` };
	};
}

function asBefore<Value>(
	found: { value: Value; whose: string } | null,
	asText: (value: Value) => string
): Offer | null {
	return found && { value: asText(found.value), sure: false, reason: `so it was in ${found.whose}` };
}

/** The wheel on the bike that was said, else on the bike whose gears it were; else what the rider rode last. */
function wheelOffer(ledger: Ledger, before: Before): Offers {
	const wheels = new Map(listWheelRecords(ledger).map(({ id, name }) => [id, name]));
	const { wheelOn } = wheelsOnBikes(ledger);
	const bikeOf = bikeOffer(ledger);
	return (ride) => {
		const said = wheelOn(ride);
		if (said)
			return { value: String(said.id), sure: true, reason: `${said.name} was on that bike at that time` };
		const bike = ride.bikeId === null ? bikeOf(ride) : null;
		const carried = bike && wheelOn({ ...ride, bikeId: Number(bike.value) });
		if (bike && carried)
			return {
				value: String(carried.id),
				sure: true,
				reason: `${bike.reason}; ${carried.name} was on that bike then`
			};
		const last = before(ride, 'riderId', ({ wheelId }) => wheelId);
		return (
			last && {
				value: String(last.value),
				sure: false,
				reason: `${wheels.get(last.value)} was ridden in ${last.whose}`
			}
		);
	};
}

/** The build fitted on the wheel nearest in time to the ride. */
function nearestBuild(ledger: Ledger, ride: RideFacts): Offer | null {
	const distance = ({ fromMs, untilMs }: { fromMs: number; untilMs: number | null }) =>
		ride.endMs <= fromMs ? fromMs - ride.endMs : ride.startMs - (untilMs ?? Infinity);
	const [nearest] = listPeriods(ledger)
		.filter(({ wheelId }) => wheelId === ride.wheelId)
		.sort((a, b) => distance(a) - distance(b));
	if (!nearest) return null;
	const name = listBuildRecords(ledger).find(({ id }) => id === nearest.buildId)?.name ?? '';
	const after = ride.endMs <= nearest.fromMs;
	const when = shortDate(ledger, after ? nearest.fromMs : (nearest.untilMs ?? nearest.fromMs));
	return {
		value: String(nearest.buildId),
		sure: false,
		reason: after ? `${name} was fitted next, on ${when}` : `${name} came off last, on ${when}`
	};
}

/** What was said of another ride within twelve hours. */
function sameDay(ledger: Ledger, ride: RideFacts): Offer | null {
	const near = allRideFacts(ledger)
		.filter((other) => other.wet !== null && Math.abs(other.startMs - ride.startMs) <= 12 * 3_600_000)
		.sort((a, b) => Math.abs(a.startMs - ride.startMs) - Math.abs(b.startMs - ride.startMs))[0];
	return near
		? {
				value: yesNo(near.wet),
				sure: false,
				reason: `so it was in the ride of ${shortDate(ledger, near.startMs)}`
			}
		: null;
}

function hasPositions(ledger: Ledger, ride: RideFacts): boolean {
	return (
		ledger.channels
			.prepare("SELECT 1 FROM channel WHERE sha256 = ? AND version = ? AND name = 'latitudeDeg'")
			.get(ride.sha256, currentVersion(ledger)) !== undefined
	);
}
