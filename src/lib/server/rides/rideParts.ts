import type { ObservedStretch } from '$lib/slip/analysis';
import type { Ledger } from '../ledger/openLedger';
import { partAmounts, type PartAmount } from './partAmounts';
import { rideChannels } from './rideChannels';

type OfRide<Row> = Row & { readonly rideId: number };

/** The cuts of every split ride, or of one, in order of time. */
export function readCuts(ledger: Ledger, rideId?: number): ReadonlyMap<number, readonly number[]> {
	const rows = ledger.database
		.prepare<[object], { rideId: number; atMs: number }>(
			`SELECT ride_id AS rideId, at_ms AS atMs FROM ride_cut
			WHERE ride_id = coalesce(@rideId, ride_id) ORDER BY ride_id, at_ms`
		)
		.all({ rideId: rideId ?? null });
	const cuts = new Map<number, number[]>();
	for (const { rideId: id, atMs } of rows) cuts.set(id, [...(cuts.get(id) ?? []), atMs]);
	return cuts;
}

/** What the parts of every split ride, or of one, amount to by one version of the analysis, in order. */
export function readParts(
	ledger: Ledger,
	version: number,
	rideId?: number
): ReadonlyMap<number, readonly PartAmount[]> {
	const rows = ledger.database
		.prepare<[object], OfRide<PartAmount>>(
			`SELECT ride_id AS rideId, from_s AS fromS, to_s AS toS, from_m AS fromM, total_m AS totalM,
				observed_m AS observedM, driven_m AS drivenM
			FROM ride_part WHERE version = @version AND ride_id = coalesce(@rideId, ride_id)
			ORDER BY ride_id, part`
		)
		.all({ version, rideId: rideId ?? null });
	const parts = new Map<number, PartAmount[]>();
	for (const { rideId: id, ...amount } of rows) parts.set(id, [...(parts.get(id) ?? []), amount]);
	return parts;
}

/**
 * Writes down what the parts of a ride amount to by one version of the analysis; a ride that is not cut has
 * none. The traces of that version must be there already. Belongs in the caller's transaction.
 *
 * @returns false when a cut ride has no result or no traces of that version: nothing was written then
 */
export function saveParts(ledger: Ledger, rideId: number, version: number): boolean {
	const { database } = ledger;
	database.prepare('DELETE FROM ride_part WHERE ride_id = ? AND version = ?').run(rideId, version);
	const cutsMs = readCuts(ledger, rideId).get(rideId) ?? [];
	if (cutsMs.length === 0) return true;
	const ride = database
		.prepare<
			[number, number],
			{ startMs: number; durationS: number } & Record<(typeof SUMS)[number], number>
		>(
			`SELECT r.started_ms AS startMs, r.duration_s AS durationS, s.total_m AS totalM,
				s.observed_m AS observedM, s.driven_m AS drivenM
			FROM ride r JOIN result s ON s.ride_id = r.id WHERE r.id = ? AND s.version = ?`
		)
		.get(rideId, version);
	const traces = ride && rideChannels(ledger, rideId, { version, names: ['distanceM', 'state'] });
	const trace = (name: string) => traces?.channels.find((channel) => channel.name === name)?.values;
	const [distanceM, state] = [trace('distanceM'), trace('state')];
	if (!ride || !distanceM || !state) return false;
	const observed = database
		.prepare<[number, number], ObservedStretch>(
			`SELECT start_s AS startS, end_s AS endS, start_m AS startM, end_m AS endM
			FROM observed_stretch WHERE ride_id = ? AND version = ? ORDER BY start_s`
		)
		.all(rideId, version);
	const cutsS = cutsMs.map((ms) => (ms - ride.startMs) / 1000);
	const add = database.prepare('INSERT INTO ride_part VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)');
	partAmounts({ ...ride, distanceM, state, observed }, cutsS).forEach((part, index) =>
		add.run(rideId, version, index, part.fromS, part.toS, part.fromM, ...SUMS.map((name) => part[name]))
	);
	return true;
}

const SUMS = ['totalM', 'observedM', 'drivenM'] as const;
