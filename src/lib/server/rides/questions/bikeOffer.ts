import { development } from '$lib/drivetrain/development';
import { gearSetDistance, type RiddenGear } from '$lib/drivetrain/gearSetDistance';
import type { ResultDetail } from '../../../../jobs/analysis/messages';
import { listBikeRecords, teethOf, type BikeRecord } from '../../hardware/bikeRows';
import type { Ledger } from '../../ledger/openLedger';
import { currentVersion } from '../../queue/analysisVersions';
import { allRideFacts, type RideFacts } from '../rideFacts';
import type { Offer } from './offers';
import { wheelsOnBikes } from './wheelOnBike';

/**
 * Gears of one bike agree within this, relative. In the 40 rides of the example the right bike lay at 0.00 to
 * 0.31 % (one ride at 1.3 %), another bike at 1.3 to 4.6 %: a wide cassette is near to everything.
 */
const NEAR = 0.01;
/** the next bike must be this many times farther away */
const CLEAR_LEAD = 2;
const RIDES_OF_A_BIKE = 5;

/**
 * Offers the bike whose gears are nearest to those learned from the ride: the gears of its latest rides, or
 * those that it states. Where it is written down which bike the wheel was on, nobody is asked.
 *
 * @returns a function of a ride; it reads each bike once
 */
export function bikeOffer(ledger: Ledger): (ride: RideFacts) => Offer | null {
	const ridden = ridesByBike(ledger);
	const bikes = listBikeRecords(ledger).map((bike) => ({
		bike,
		gearSet: gearSetOf(ledger, bike, ridden.get(bike.id) ?? [])
	}));
	return (ride) => {
		const gears = learnedGears(ledger, ride.id);
		const near = bikes
			.map(({ bike, gearSet }) => ({ bike, distance: gearSetDistance(gears, gearSet) }))
			.filter(({ distance }) => Number.isFinite(distance))
			.sort((a, b) => a.distance - b.distance);
		const [first, second] = near;
		if (first && first.distance <= NEAR && (!second || second.distance >= CLEAR_LEAD * first.distance)) {
			const next = second ? `; next ${second.bike.name}, ${percent(second.distance)}` : '';
			return {
				value: String(first.bike.id),
				sure: true,
				reason: `its gears lie ${percent(first.distance)} from those of ${first.bike.name}${next}`
			};
		}
		return null;
	};
}

/** The rides of each bike in order, said or by the wheel that it carried. */
function ridesByBike(ledger: Ledger): Map<number, number[]> {
	const { bikeUnder } = wheelsOnBikes(ledger);
	const byBike = new Map<number, number[]>();
	for (const ride of allRideFacts(ledger)) {
		const bikeId = ride.bikeId ?? bikeUnder(ride)?.id;
		if (bikeId === undefined || ride.withdrawnReason !== null) continue;
		byBike.set(bikeId, [...(byBike.get(bikeId) ?? []).slice(1 - RIDES_OF_A_BIKE), ride.id]);
	}
	return byBike;
}

function gearSetOf(ledger: Ledger, bike: BikeRecord, rides: readonly number[]): number[] {
	const ridden = rides.flatMap((id) => learnedGears(ledger, id).map(({ developmentM }) => developmentM));
	if (ridden.length > 0) return ridden;
	const wheels = wheelsOf(ledger, bike.id);
	return wheels.flatMap((wheel) => {
		const [cassette, circumferenceM] = [
			bike.cassette ?? wheel.cassette,
			wheel.circumferenceM ?? bike.circumferenceM
		];
		if (circumferenceM === null || !bike.chainrings || !cassette) return [];
		return bike.chainrings.flatMap((ring) =>
			cassette.map((sprocket) => development(ring, sprocket, circumferenceM))
		);
	});
}

/** What the wheels that were on a bike state; a bike without a wheel of its own states what it can itself. */
function wheelsOf(
	ledger: Ledger,
	bikeId: number
): { cassette: readonly number[] | null; circumferenceM: number | null }[] {
	const rows = ledger.database
		.prepare<[number], { cassette: string | null; circumferenceM: number | null }>(
			`SELECT DISTINCT w.id, w.cassette, w.circumference_m AS circumferenceM FROM wheel_on_bike o
			JOIN wheel w ON w.id = o.wheel_id WHERE o.bike_id = ? AND o.withdrawn_ms IS NULL`
		)
		.all(bikeId);
	if (rows.length === 0) return [{ cassette: null, circumferenceM: null }];
	return rows.map(({ cassette, circumferenceM }) => ({ cassette: teethOf(cassette), circumferenceM }));
}

function learnedGears(ledger: Ledger, rideId: number): readonly RiddenGear[] {
	const row = ledger.database
		.prepare<[number, number], { detail: string }>(
			'SELECT detail FROM result_detail WHERE ride_id = ? AND version = ?'
		)
		.get(rideId, currentVersion(ledger));
	return row ? (JSON.parse(row.detail) as ResultDetail).gears : [];
}

function percent(share: number): string {
	return `${(share * 100).toFixed(1)} %`;
}
