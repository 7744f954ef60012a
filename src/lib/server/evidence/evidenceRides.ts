import { hubTorqueBin } from '$lib/slip/hubTorqueBins';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { IN_THE_RATE } from '../rates/eventTallies';
import { byRide, type OfRide } from '../rides/byRide';

/** How much was ridden at one hub torque, in one gear. */
export interface EvidenceCell {
	/** number of the torque bin; -1 = not known, which is a bin of its own */
	readonly torqueBin: number;
	readonly gear: string | null;
	/** chainring / sprocket; null = no gear is known there */
	readonly ratio: number | null;
	readonly drivenM: number;
	readonly observedM: number;
	/** crank turns under drive on observed stretches; each has two power strokes */
	readonly observedTurns: number;
	readonly observedPickUps: number;
}

/** A slip that the rate is about: reference size, on an observed stretch. Rejected ones are among them. */
export interface EvidenceEvent {
	readonly eventId: number;
	readonly startS: number;
	readonly endS: number;
	/** metres from the start of the ride */
	readonly atM: number;
	readonly overrunCrankDeg: number;
	readonly torqueBin: number;
	readonly gear: string | null;
	readonly standing: 'confirmed' | 'unreviewed' | 'rejected';
}

/** Metres from the start of a ride. */
export interface Stretch {
	readonly fromM: number;
	readonly toM: number;
}

/** What one ride tells, as statistics see it. */
export interface RideEvidence {
	readonly cells: readonly EvidenceCell[];
	/** by the clock, 0 = the first hour */
	readonly hours: readonly { readonly hour: number; readonly observedM: number }[];
	/** observed stretches in metres from the start of the ride */
	readonly observed: readonly Stretch[];
	readonly events: readonly EvidenceEvent[];
	/** when failed pick-ups that are not rejected began, seconds from the start, on observed stretches */
	readonly failedPickUps: readonly number[];
	/** mean that the device recorded over the ride; null = not recorded, or not kept by an older program */
	readonly temperatureC: number | null;
}

type EventRow = OfRide & Omit<EvidenceEvent, 'torqueBin' | 'standing'> & EventStanding;
interface EventStanding {
	readonly hubTorqueNm: number | null;
	readonly verdict: 'confirmed' | 'rejected' | null;
}

/** rides that are read together: what their rows take is gone before the next ones are read */
const AT_A_TIME = 400;

/**
 * Exposure, observed stretches and events of these rides by the current version of the analysis, read in
 * six queries for some hundred rides. Thousands of rides are kept by whoever asks, so stretches, by far the most rows,
 * are kept as numbers and made into objects when they are looked at.
 *
 * @param rideIds each once; a ride without a result has nothing in its lists
 */
export function evidenceOfRides(
	ledger: Ledger,
	rideIds: readonly number[],
	atATime = AT_A_TIME
): ReadonlyMap<number, RideEvidence> {
	const told = new Map<number, RideEvidence>();
	// the same few gears in every ride: one string each
	const gears = new Map<string, string>();
	for (let from = 0; from < rideIds.length; from += atATime)
		readSome(ledger, rideIds.slice(from, from + atATime), gears, told);
	return told;
}

function readSome(
	ledger: Ledger,
	rideIds: readonly number[],
	gears: Map<string, string>,
	into: Map<number, RideEvidence>
): void {
	const asked = { version: currentVersion(ledger), rideIds: JSON.stringify(rideIds) };
	const read = <Row extends OfRide>(sql: string) =>
		byRide(ledger.database.prepare<[object], Row>(sql).all(asked));
	const oneString = (gear: string | null) => {
		if (gear === null) return null;
		if (!gears.has(gear)) gears.set(gear, gear);
		return gears.get(gear)!;
	};
	const cells = read<OfRide & EvidenceCell & { torqueFromNm: number | null }>(
		`SELECT ride_id AS rideId, torque_from_nm AS torqueFromNm, gear, ratio, driven_m AS drivenM,
			observed_m AS observedM, observed_turns AS observedTurns, observed_pick_ups AS observedPickUps
		FROM exposure_cell t WHERE ${ofAsked('t')} ORDER BY ride_id, cell`
	);
	const hours = read<OfRide & { hour: number; observedM: number }>(
		`SELECT ride_id AS rideId, hour, observed_m AS observedM
		FROM exposure_hour t WHERE ${ofAsked('t')} ORDER BY ride_id, hour`
	);
	const observed = read<OfRide & { fromM: number; toM: number }>(
		`SELECT ride_id AS rideId, start_m AS fromM, end_m AS toM
		FROM observed_stretch t WHERE ${ofAsked('t')} ORDER BY ride_id, start_s`
	);
	const events = read<EventRow>(
		`SELECT e.ride_id AS rideId, e.id AS eventId, e.start_s AS startS, e.end_s AS endS, e.at_m AS atM,
			e.overrun_crank_deg AS overrunCrankDeg, e.hub_torque_nm AS hubTorqueNm, e.gear, v.verdict
		FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
		WHERE ${IN_THE_RATE} AND ${ofAsked('e')} ORDER BY e.ride_id, e.start_s, e.id`
	);
	const pickUps = read<OfRide & { startS: number }>(
		`SELECT e.ride_id AS rideId, e.start_s AS startS
		FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
		WHERE e.kind = 'failed pick-up' AND e.observed = 1 AND v.verdict IS NOT 'rejected'
			AND ${ofAsked('e')}
		ORDER BY e.ride_id, e.start_s`
	);
	const temperatures = read<OfRide & { meanC: number | null }>(
		`SELECT ride_id AS rideId, detail ->> '$.temperature.meanC' AS meanC
		FROM result_detail t WHERE ${ofAsked('t')}`
	);
	const stretches = packed(rideIds.map((id) => observed.get(id) ?? []));
	rideIds.forEach((id, place) =>
		into.set(id, {
			cells: (cells.get(id) ?? []).map(
				({ torqueFromNm, gear, ratio, drivenM, observedM, observedTurns, observedPickUps }) => ({
					torqueBin: hubTorqueBin(torqueFromNm ?? NaN),
					gear: oneString(gear),
					ratio,
					drivenM,
					observedM,
					observedTurns,
					observedPickUps
				})
			),
			hours: (hours.get(id) ?? []).map(({ hour, observedM }) => ({ hour, observedM })),
			get observed() {
				return stretches(place);
			},
			events: (events.get(id) ?? []).map(toEvent),
			failedPickUps: (pickUps.get(id) ?? []).map(({ startS }) => startS),
			temperatureC: temperatures.get(id)?.[0].meanC ?? null
		})
	);
}

/** Stretches of many rides as one list of numbers; gives those of one ride back. */
function packed(ofRides: readonly (readonly Stretch[])[]): (place: number) => Stretch[] {
	const metres = Float64Array.from(ofRides.flatMap((all) => all.flatMap(({ fromM, toM }) => [fromM, toM])));
	const ends = Uint32Array.from(
		ofRides,
		(
			(end) =>
			({ length }) =>
				(end += 2 * length)
		)(0)
	);
	return (place) => {
		const stretches: Stretch[] = [];
		for (let at = place === 0 ? 0 : ends[place - 1]; at < ends[place]; at += 2)
			stretches.push({ fromM: metres[at], toM: metres[at + 1] });
		return stretches;
	};
}

function ofAsked(table: string): string {
	return `${table}.version = @version AND ${table}.ride_id IN (SELECT value FROM json_each(@rideIds))`;
}

/** field by field: a row itself, or a copy with something added, takes several times the memory */
function toEvent({ hubTorqueNm, verdict, ...event }: EventRow): EvidenceEvent {
	return {
		eventId: event.eventId,
		startS: event.startS,
		endS: event.endS,
		atM: event.atM,
		overrunCrankDeg: event.overrunCrankDeg,
		gear: event.gear,
		torqueBin: hubTorqueBin(hubTorqueNm ?? NaN),
		standing: verdict ?? 'unreviewed'
	};
}
