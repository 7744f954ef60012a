import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { trailVersion } from '../ledger/trailVersion';
import { partsOfRides } from '../rides/evidenceParts';
import { rideBriefs, type RideBrief } from '../rides/rideBriefs';
import { allRideFacts, type RideFacts } from '../rides/rideFacts';
import { rideRows } from '../rides/rideRow';
import type { FittedPeriodView, WheelRow, WheelView } from '../views';
import { listBuildRecords } from './builds';
import { listPeriods } from './periodRows';
import { listWheelRecords, type WheelRecord } from './wheels';

/** Every wheel with what is on it now and how far it has been ridden. */
export function listWheels(ledger: Ledger): WheelRow[] {
	const onWheel = new Map<number | null, RideBrief[]>();
	for (const ride of rideBriefs(ledger)) {
		if (!ride.counted) continue;
		const others = onWheel.get(ride.wheelId);
		if (others) others.push(ride);
		else onWheel.set(ride.wheelId, [ride]);
	}
	const periods = listPeriods(ledger);
	const names = buildNames(ledger);
	return listWheelRecords(ledger).map((wheel) =>
		toRow(ledger, wheel, onWheel.get(wheel.id) ?? [], periods, names)
	);
}

/** What a wheel's page shows: the rides and builds, and what is written down of the wheel itself. */
export interface WheelPage extends WheelView {
	facts: WheelRecord;
}

/** One wheel with its builds over time and its rides, the newest first; null when there is no such wheel. */
export function wheelView(ledger: Ledger, wheelId: number): WheelPage | null {
	const wheel = listWheelRecords(ledger).find(({ id }) => id === wheelId);
	if (!wheel) return null;
	const rides = allRideFacts(ledger, wheelId);
	const periods = listPeriods(ledger).filter((period) => period.wheelId === wheelId);
	const names = buildNames(ledger);
	return {
		...toRow(ledger, wheel, countedOf(rides), periods, names),
		periods: periods.map((period) => toPeriod(ledger, period, rides, names)).reverse(),
		rideList: rideRows(ledger, [...rides].reverse()),
		facts: wheel
	};
}

function toRow(
	ledger: Ledger,
	wheel: WheelRecord,
	counted: readonly { readonly totalM: number }[],
	periods: readonly FittedPeriod[],
	names: ReadonlyMap<number, string>
): WheelRow {
	const now = ledger.now();
	const fitted = periods.find(
		({ wheelId, fromMs, untilMs }) =>
			wheelId === wheel.id && fromMs <= now && (untilMs === null || now < untilMs)
	);
	return {
		id: wheel.id,
		name: wheel.name,
		hub: wheel.hub,
		circumferenceM: wheel.circumferenceM,
		knownGood: wheel.knownGood === 1,
		currentBuild: fitted ? { id: fitted.buildId, name: names.get(fitted.buildId) ?? '' } : null,
		totalM: distanceOf(counted),
		rides: counted.length,
		example: wheel.example === 1
	};
}

/** Distance and number of the rides that lie wholly in the period and count for its build. */
function toPeriod(
	ledger: Ledger,
	period: FittedPeriod,
	rides: readonly RideFacts[],
	names: ReadonlyMap<number, string>
): FittedPeriodView {
	const inside = ridesInPeriod(period, partsOfRides(rides));
	return {
		id: period.id,
		build: { id: period.buildId, name: names.get(period.buildId) ?? '' },
		from: toInstant(period.fromMs),
		until: period.untilMs === null ? null : toInstant(period.untilMs),
		totalM: distanceOf(inside),
		rides: inside.length,
		version: trailVersion(ledger, 'fitted period', period.id)
	};
}

export function ridesInPeriod(period: FittedPeriod, rides: readonly RideFacts[]): RideFacts[] {
	return rides.filter(
		(ride) =>
			ride.standing.state === 'counted' &&
			ride.wheelId === period.wheelId &&
			ride.buildId === period.buildId &&
			ride.startMs >= period.fromMs &&
			(period.untilMs === null || ride.endMs <= period.untilMs)
	);
}

function countedOf(rides: readonly RideFacts[]): RideFacts[] {
	return rides.filter((ride) => ride.standing.state === 'counted');
}

export function distanceOf(rides: readonly { readonly totalM: number }[]): number {
	return rides.reduce((sum, ride) => sum + ride.totalM, 0);
}

function buildNames(ledger: Ledger): Map<number, string> {
	return new Map(listBuildRecords(ledger).map((build) => [build.id, build.name]));
}
