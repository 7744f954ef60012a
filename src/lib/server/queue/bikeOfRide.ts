import type { Bike } from '$lib/drivetrain/bike';
import type { Ledger } from '../ledger/openLedger';
import { statedFacts } from './bikeFacts';

/** What says which bike a ride was ridden on. */
export interface RiddenOn {
	/** the bike that a person named; null = not said */
	readonly bikeId: number | null;
	readonly wheelId: number | null;
	/** null = not known before the file is read */
	readonly startMs: number | null;
}

interface BikeRow {
	id: number;
	chainrings: string | null;
	cassette: string | null;
	circumferenceM: number | null;
	speedSensor: 'rear hub' | 'front hub' | 'GPS' | null;
	powerFrom: 'crank' | 'pedals' | 'one side doubled' | 'hub' | 'none' | null;
}
interface WheelRow {
	id: number;
	cassette: string | null;
	circumferenceM: number | null;
}
interface OnBikeRow {
	wheelId: number;
	bikeId: number;
	fromMs: number;
	untilMs: number | null;
}

const SPEED_SENSORS = { 'rear hub': 'rear', 'front hub': 'front', GPS: 'gps' } as const;

/**
 * Reads bikes and wheels once and gives for each ride what the analysis is told of its bike. A person's
 * word on the bike comes first, then the bike that carried the wheel at that time. Tyre and cassette belong
 * to the wheel: what is stated there wins over the bike's.
 */
export function bikesOfRides(ledger: Ledger): (ride: RiddenOn) => Bike {
	const { database } = ledger;
	const bikes = byId(
		database
			.prepare<[], BikeRow>(
				`SELECT id, chainrings, cassette, circumference_m AS circumferenceM, speed_sensor AS speedSensor,
					power_from AS powerFrom FROM bike`
			)
			.all()
	);
	const wheels = byId(
		database.prepare<[], WheelRow>('SELECT id, cassette, circumference_m AS circumferenceM FROM wheel').all()
	);
	const onBikes = database
		.prepare<[], OnBikeRow>(
			`SELECT wheel_id AS wheelId, bike_id AS bikeId, from_ms AS fromMs, until_ms AS untilMs
			FROM wheel_on_bike WHERE withdrawn_ms IS NULL`
		)
		.all();
	return (ride) => {
		const bikeId = ride.bikeId ?? carrierOf(onBikes, ride);
		return factsOf(bikes.get(bikeId ?? -1), wheels.get(ride.wheelId ?? -1));
	};
}

function byId<Row extends { id: number }>(rows: readonly Row[]): Map<number, Row> {
	return new Map(rows.map((row) => [row.id, row]));
}

/** The bike that carried the wheel; before the time is known only if it was never on another one. */
function carrierOf(onBikes: readonly OnBikeRow[], { wheelId, startMs }: RiddenOn): number | null {
	const ofWheel = onBikes.filter((row) => row.wheelId === wheelId);
	if (startMs === null) {
		const ids = new Set(ofWheel.map(({ bikeId }) => bikeId));
		return ids.size === 1 ? ofWheel[0].bikeId : null;
	}
	const then = ofWheel.find(
		({ fromMs, untilMs }) => fromMs <= startMs && (untilMs === null || startMs < untilMs)
	);
	return then?.bikeId ?? null;
}

function factsOf(bike: BikeRow | undefined, wheel: WheelRow | undefined): Bike {
	const cassette = teeth(wheel?.cassette) ?? teeth(bike?.cassette);
	const chainrings = teeth(bike?.chainrings);
	const circumferenceM = wheel?.circumferenceM ?? bike?.circumferenceM ?? undefined;
	const powerFrom = bike?.powerFrom ?? 'none';
	return statedFacts({
		...(cassette ? { cassette } : {}),
		...(chainrings ? { chainrings } : {}),
		...(circumferenceM === undefined ? {} : { circumferenceM }),
		...(bike?.speedSensor ? { speedSensor: SPEED_SENSORS[bike.speedSensor] } : {}),
		// at the pedals or doubled from one side it is still measured before the drivetrain's losses
		...(powerFrom === 'none' ? {} : { powerAt: powerFrom === 'hub' ? 'hub' : 'crank' })
	});
}

function teeth(stored: string | null | undefined): number[] | undefined {
	return stored ? (JSON.parse(stored) as number[]) : undefined;
}
