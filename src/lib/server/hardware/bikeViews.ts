import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { agesHardware } from '../rides/agesBuild';
import { allRideFacts, type RideFacts } from '../rides/rideFacts';
import type { Instant } from '../views';
import { bikeGears, type BikeGearsView } from './bikeGears';
import { listBikeRecords, type BikeRecord } from './bikeRows';
import { listOnBikes, onBikeAt, type OnBikeRecord } from './wheelOnBike';
import { listWheelRecords } from './wheels';

export interface BikeRow extends BikeRecord {
	/** the wheel that is on it now */
	wheel: { id: number; name: string } | null;
	rides: number;
	totalM: number;
}

export interface OnBikeView {
	id: number;
	wheel: { id: number; name: string };
	bike: { id: number; name: string };
	from: Instant;
	until: Instant | null;
	deviceCircumferenceM: number | null;
}

export interface BikeView extends BikeRow {
	onBike: OnBikeView[];
	/** one for each wheel that rides of this bike name */
	gears: BikeGearsView[];
}

/** Every bike with the wheel that is on it and how far it was ridden. */
export function listBikes(ledger: Ledger): BikeRow[] {
	const onBikes = listOnBikes(ledger);
	const rides = ridesByBike(ledger, onBikes);
	return listBikeRecords(ledger).map((bike) => toRow(ledger, bike, onBikes, rides.get(bike.id) ?? []));
}

/** One bike; null when there is no such bike. */
export function bikeView(ledger: Ledger, bikeId: number): BikeView | null {
	const bike = listBikeRecords(ledger).find(({ id }) => id === bikeId);
	if (!bike) return null;
	const onBikes = listOnBikes(ledger);
	const rides = ridesByBike(ledger, onBikes).get(bikeId) ?? [];
	const wheels = new Map(listWheelRecords(ledger).map((wheel) => [wheel.id, wheel]));
	const wheelIds = [...new Set(rides.map(({ wheelId }) => wheelId))];
	return {
		...toRow(ledger, bike, onBikes, rides),
		onBike: onBikes
			.filter((row) => row.bikeId === bikeId)
			.map(onBikeView)
			.reverse(),
		gears: wheelIds.map((wheelId) =>
			bikeGears(
				ledger,
				bike,
				wheels.get(wheelId ?? -1) ?? null,
				rides.filter((ride) => ride.wheelId === wheelId)
			)
		)
	};
}

/** On which bikes a wheel was, the newest first. */
export function wheelsBikes(ledger: Ledger, wheelId: number): OnBikeView[] {
	return listOnBikes(ledger)
		.filter((row) => row.wheelId === wheelId)
		.map(onBikeView)
		.reverse();
}

/** The bike of a ride: a person's word, else the bike that carried the wheel; null when neither says. */
export function bikeIdOf(ride: RideFacts, onBikes: readonly OnBikeRecord[]): number | null {
	return ride.bikeId ?? onBikeAt(onBikes, ride.wheelId, ride.startMs)?.bikeId ?? null;
}

export function onBikeView(row: OnBikeRecord): OnBikeView {
	return {
		id: row.id,
		wheel: { id: row.wheelId, name: row.wheel },
		bike: { id: row.bikeId, name: row.bike },
		from: toInstant(row.fromMs),
		until: row.untilMs === null ? null : toInstant(row.untilMs),
		deviceCircumferenceM: row.deviceCircumferenceM
	};
}

function ridesByBike(ledger: Ledger, onBikes: readonly OnBikeRecord[]): Map<number, RideFacts[]> {
	const rides = new Map<number, RideFacts[]>();
	for (const ride of allRideFacts(ledger)) {
		const bikeId = bikeIdOf(ride, onBikes);
		if (bikeId === null || !agesHardware(ride)) continue;
		const ofBike = rides.get(bikeId);
		if (ofBike) ofBike.push(ride);
		else rides.set(bikeId, [ride]);
	}
	return rides;
}

function toRow(
	ledger: Ledger,
	bike: BikeRecord,
	onBikes: readonly OnBikeRecord[],
	rides: readonly RideFacts[]
): BikeRow {
	const now = ledger.now();
	const fitted = onBikes.find(
		({ bikeId, fromMs, untilMs }) =>
			bikeId === bike.id && fromMs <= now && (untilMs === null || now < untilMs)
	);
	return {
		...bike,
		wheel: fitted ? { id: fitted.wheelId, name: fitted.wheel } : null,
		rides: rides.length,
		totalM: rides.reduce((sum, { totalM }) => sum + totalM, 0)
	};
}
