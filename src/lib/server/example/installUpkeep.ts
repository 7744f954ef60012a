import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Actor } from '../actor';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { createBike, type BikeInput } from '../hardware/bikes';
import { recordOdometer } from '../hardware/odometerReadings';
import { recordService, type ServiceInput } from '../hardware/services';
import { recordUnloggedDistance } from '../hardware/unloggedDistance';
import { updateWheel } from '../hardware/updateWheel';
import { putWheelOnBike } from '../hardware/wheelOnBike';
import { findWheel, type WheelInput } from '../hardware/wheels';
import { freeName } from './freeName';

type OnWheel = { readonly wheel: string; readonly at: string };

/** What of workshop/upkeep.json the ledger takes over; wheels by their ids in the programme. */
interface Upkeep {
	readonly wheels: readonly (Partial<WheelInput> & { readonly wheel: string })[];
	readonly bikes: readonly (BikeInput & { readonly id: string })[];
	readonly onBikes: readonly {
		readonly wheel: string;
		readonly bike: string;
		readonly from: string;
		readonly deviceCircumferenceM?: number;
	}[];
	readonly services: readonly (OnWheel & ServiceInput)[];
	readonly unlogged: readonly (OnWheel & { readonly distanceM: number; readonly note?: string })[];
	readonly odometer: readonly (OnWheel & { readonly readingM: number; readonly note?: string })[];
}

/**
 * Puts bikes, tyres, services, counters and unrecorded distance of the example workshop into the ledger.
 * Belongs in the caller's transaction, after wheels and fitted periods. An example that came without the
 * file has none.
 */
export function installUpkeep(
	ledger: Ledger,
	actor: Actor,
	folder: string,
	wheels: ReadonlyMap<string, number>
): void {
	const file = join(folder, 'workshop', 'upkeep.json');
	if (!existsSync(file)) return;
	const upkeep = JSON.parse(readFileSync(file, 'utf8')) as Upkeep;
	const example = { example: true };
	const wheelOf = (name: string) => wheels.get(name) ?? NaN;
	for (const { wheel, ...facts } of upkeep.wheels) {
		const { rowVersion, existsFromMs, ...known } = findWheel(ledger, wheelOf(wheel));
		const existsFrom = existsFromMs === null ? null : toInstant(existsFromMs);
		updateWheel(ledger, actor, known.id, { existsFrom, ...known, ...facts }, rowVersion, example);
	}
	const bikes = new Map<string, number>();
	for (const { id, ...bike } of upkeep.bikes)
		bikes.set(id, createBike(ledger, actor, { ...bike, name: freeName(ledger, 'bike', bike.name) }, example));
	for (const { wheel, bike, ...on } of upkeep.onBikes)
		putWheelOnBike(
			ledger,
			actor,
			{ ...on, wheelId: wheelOf(wheel), bikeId: bikes.get(bike) ?? NaN },
			example
		);
	for (const { wheel, ...service } of upkeep.services)
		recordService(ledger, actor, wheelOf(wheel), service, example);
	for (const { wheel, ...piece } of upkeep.unlogged)
		recordUnloggedDistance(ledger, actor, wheelOf(wheel), piece, example);
	for (const { wheel, ...reading } of upkeep.odometer)
		recordOdometer(ledger, actor, wheelOf(wheel), reading, example);
}
