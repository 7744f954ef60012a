import type { Actor } from '../actor';
import { checkNumber } from '../ledger/checkNumber';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import { findBike } from './bikeRows';
import { refuseBeforeWheel, refuseFuture, refuseWrongOrder } from './periodRows';
import { findWheel } from './wheels';

/** When a wheel was on a bike: from <= instant < until. */
export interface OnBikeRecord {
	id: number;
	wheelId: number;
	bikeId: number;
	wheel: string;
	bike: string;
	fromMs: number;
	untilMs: number | null;
	/** circumference that the bike's device was set to, metres; null = not known */
	deviceCircumferenceM: number | null;
}

const SELECT = `SELECT o.id, o.wheel_id AS wheelId, o.bike_id AS bikeId, w.name AS wheel, b.name AS bike,
	o.from_ms AS fromMs, o.until_ms AS untilMs, o.device_circumference_m AS deviceCircumferenceM
	FROM wheel_on_bike o JOIN wheel w ON w.id = o.wheel_id JOIN bike b ON b.id = o.bike_id
	WHERE o.withdrawn_ms IS NULL`;

/** Which wheel was on which bike, in order of time. */
export function listOnBikes(ledger: Ledger): OnBikeRecord[] {
	return ledger.database.prepare<[], OnBikeRecord>(`${SELECT} ORDER BY o.from_ms, o.id`).all();
}

/** The row that says on which bike a wheel was at an instant; null when none does. */
export function onBikeAt(
	onBikes: readonly OnBikeRecord[],
	wheelId: number | null,
	ms: number
): OnBikeRecord | null {
	const row = onBikes.find(
		(one) => one.wheelId === wheelId && one.fromMs <= ms && (one.untilMs === null || ms < one.untilMs)
	);
	return row ?? null;
}

export interface OnBikeInput {
	wheelId: number;
	bikeId: number;
	from: string;
	/** null = still on it */
	until?: string | null;
	deviceCircumferenceM?: number | null;
}

/**
 * Puts a wheel on a bike from an instant on. Whatever was on that bike, and wherever that wheel was, ends
 * there.
 *
 * @returns id of the new row
 * @throws LedgerRefusal not-found; overlap with what began later or has ended; wrong-value
 */
export function putWheelOnBike(
	ledger: Ledger,
	actor: Actor,
	input: OnBikeInput,
	options: { example?: boolean } = {}
): number {
	const fromMs = fromInstant(input.from);
	const untilMs = input.until ? fromInstant(input.until) : null;
	refuseWrongOrder(ledger, fromMs, untilMs, 'A wheel must come off the bike later than it was put on');
	if (!options.example) for (const ms of [fromMs, untilMs]) refuseFuture(ledger, ms);
	const deviceCircumferenceM = checkNumber(
		'The circumference set in the device',
		input.deviceCircumferenceM,
		{
			min: 0.5,
			max: 4,
			unit: 'metres'
		}
	);
	return ledger.database
		.transaction((): number => {
			const wheel = findWheel(ledger, input.wheelId);
			const bike = findBike(ledger, input.bikeId);
			refuseBeforeWheel(ledger, wheel, fromMs);
			for (const open of touching(ledger, wheel.id, bike.id, fromMs, untilMs))
				if (open.untilMs === null && open.fromMs < fromMs) endOnBike(ledger, actor, open.id, fromMs);
			const [other] = touching(ledger, wheel.id, bike.id, fromMs, untilMs);
			if (other) throw overlap(ledger, other);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO wheel_on_bike (wheel_id, bike_id, from_ms, until_ms, device_circumference_m, created_ms)
					VALUES (?, ?, ?, ?, ?, ?)`
				)
				.run(wheel.id, bike.id, fromMs, untilMs, deviceCircumferenceM, ledger.now());
			const id = Number(lastInsertRowid);
			leaveTrail(ledger, actor, 'put on', 'wheel on a bike', id, {
				wheelId: wheel.id,
				bikeId: bike.id,
				from: toInstant(fromMs),
				until: untilMs === null ? null : toInstant(untilMs),
				deviceCircumferenceM
			});
			return id;
		})
		.immediate();
}

/**
 * Takes a wheel off its bike.
 *
 * @throws LedgerRefusal not-found; conflict when it is off already; wrong-value before it was put on
 */
export function takeWheelOffBike(ledger: Ledger, actor: Actor, id: number, until: string): void {
	const untilMs = fromInstant(until);
	refuseFuture(ledger, untilMs);
	ledger.database
		.transaction(() => {
			const row = ledger.database.prepare<[number], OnBikeRecord>(`${SELECT} AND o.id = ?`).get(id);
			if (!row) throw new LedgerRefusal('not-found', 'It is not written down that this wheel was on it.');
			if (row.untilMs !== null) throw new LedgerRefusal('conflict', 'This wheel came off already.');
			refuseWrongOrder(
				ledger,
				row.fromMs,
				untilMs,
				'A wheel must come off the bike later than it was put on'
			);
			endOnBike(ledger, actor, id, untilMs);
		})
		.immediate();
}

function endOnBike(ledger: Ledger, actor: Actor, id: number, untilMs: number): void {
	ledger.database.prepare('UPDATE wheel_on_bike SET until_ms = ? WHERE id = ?').run(untilMs, id);
	leaveTrail(ledger, actor, 'took off', 'wheel on a bike', id, { until: toInstant(untilMs) });
}

/**
 * A row that is withdrawn and would stand again needs its time free, of the wheel and of the bike. Belongs in the
 * caller's transaction.
 *
 * @throws LedgerRefusal overlap, naming what stands in the way
 */
export function refuseBikeOverlap(ledger: Ledger, withdrawnId: number): void {
	const { wheelId, bikeId, fromMs, untilMs } = ledger.database
		.prepare<[number], Pick<OnBikeRecord, 'wheelId' | 'bikeId' | 'fromMs' | 'untilMs'>>(
			`SELECT wheel_id AS wheelId, bike_id AS bikeId, from_ms AS fromMs, until_ms AS untilMs
			FROM wheel_on_bike WHERE id = ?`
		)
		.get(withdrawnId)!;
	const [other] = touching(ledger, wheelId, bikeId, fromMs, untilMs);
	if (other) throw overlap(ledger, other);
}

function touching(
	ledger: Ledger,
	wheelId: number,
	bikeId: number,
	fromMs: number,
	untilMs: number | null
): OnBikeRecord[] {
	return ledger.database
		.prepare<[object], OnBikeRecord>(
			`${SELECT} AND (o.wheel_id = @wheelId OR o.bike_id = @bikeId)
			AND o.from_ms < @untilMs AND coalesce(o.until_ms, 9e15) > @fromMs ORDER BY o.from_ms`
		)
		.all({ wheelId, bikeId, fromMs, untilMs: untilMs ?? 9e15 });
}

function overlap(ledger: Ledger, { wheel, bike, fromMs, untilMs }: OnBikeRecord): LedgerRefusal {
	const until = untilMs === null ? 'and still is' : `until ${inWorkshopZone(ledger, untilMs)}`;
	return new LedgerRefusal(
		'overlap',
		`${wheel} was on ${bike} from ${inWorkshopZone(ledger, fromMs)} ${until}; a wheel is on one bike at a time and a bike has one rear wheel. Say until when, or withdraw the other.`
	);
}
