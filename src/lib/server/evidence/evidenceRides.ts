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

/** What one ride tells, as statistics see it. */
export interface RideEvidence {
	readonly cells: readonly EvidenceCell[];
	/** by the clock, 0 = the first hour */
	readonly hours: readonly { readonly hour: number; readonly observedM: number }[];
	/** observed stretches in metres from the start of the ride */
	readonly observed: readonly { readonly fromM: number; readonly toM: number }[];
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

/**
 * Exposure, observed stretches and events of these rides by the current version of the analysis, read in
 * six queries however many rides there are.
 *
 * @param rideIds each once; a ride without a result has nothing in its lists
 */
export function evidenceOfRides(
	ledger: Ledger,
	rideIds: readonly number[]
): ReadonlyMap<number, RideEvidence> {
	const asked = { version: currentVersion(ledger), rideIds: JSON.stringify(rideIds) };
	const read = <Row extends OfRide>(sql: string) =>
		byRide(ledger.database.prepare<[object], Row>(sql).all(asked));
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
	return new Map(
		rideIds.map((id) => [
			id,
			{
				cells: (cells.get(id) ?? []).map(({ torqueFromNm, ...cell }) => ({
					...cell,
					torqueBin: hubTorqueBin(torqueFromNm ?? NaN)
				})),
				hours: hours.get(id) ?? [],
				observed: observed.get(id) ?? [],
				events: (events.get(id) ?? []).map(toEvent),
				failedPickUps: (pickUps.get(id) ?? []).map(({ startS }) => startS),
				temperatureC: temperatures.get(id)?.[0].meanC ?? null
			}
		])
	);
}

function ofAsked(table: string): string {
	return `${table}.version = @version AND ${table}.ride_id IN (SELECT value FROM json_each(@rideIds))`;
}

function toEvent({ hubTorqueNm, verdict, ...event }: EventRow): EvidenceEvent {
	return { ...event, torqueBin: hubTorqueBin(hubTorqueNm ?? NaN), standing: verdict ?? 'unreviewed' };
}
