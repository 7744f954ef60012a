import { toInstant } from '../ledger/instants';
import { feltCounts } from '../marks/feltSlips';
import { openMarks } from '../marks/openMarks';
import type { Ledger } from '../ledger/openLedger';
import { eventTallies, NO_EVENTS } from '../rates/eventTallies';
import type { RideRow } from '../views';
import type { RideFacts } from './rideFacts';

/**
 * Turns facts into rows of a list; names and tallies are read once for all rows.
 *
 * @param tallies of these rides at least, where they are at hand
 */
export function rideRows(
	ledger: Ledger,
	rides: readonly RideFacts[],
	tallies = eventTallies(
		ledger,
		rides.map(({ id }) => id)
	)
): RideRow[] {
	const wheels = namesIn(ledger, 'wheel');
	const builds = namesIn(ledger, 'build');
	const open = openMarks(ledger);
	const felt = feltCounts(ledger);
	return rides.map((ride) => {
		const tally = tallies.get(ride.id) ?? NO_EVENTS;
		return {
			id: ride.id,
			startedAt: toInstant(ride.startMs),
			localOffsetMin: ride.localOffsetS === null ? null : Math.round(ride.localOffsetS / 60),
			durationS: ride.durationS,
			totalM: ride.totalM,
			observedM: ride.observedM,
			fileName: ride.fileName,
			wheel: named(wheels, ride.wheelId),
			build: named(builds, ride.buildId),
			rider: ride.riderId === null ? null : { id: ride.riderId, code: ride.riderCode ?? '' },
			events: tally.confirmed + tally.unreviewed + tally.rejected + tally.apart,
			unreviewed: tally.withoutVerdict,
			needs: ride.standing.needs,
			openMarks: open.get(ride.id) ?? 0,
			feltSlips: felt.get(ride.id) ?? 0,
			state: ride.standing.state,
			stateReason: ride.standing.reason,
			example: ride.example === 1
		};
	});
}

function namesIn(ledger: Ledger, table: 'wheel' | 'build'): Map<number, string> {
	const rows = ledger.database
		.prepare<[], { id: number; name: string }>(`SELECT id, name FROM ${table}`)
		.all();
	return new Map(rows.map(({ id, name }) => [id, name]));
}

function named(names: ReadonlyMap<number, string>, id: number | null): { id: number; name: string } | null {
	const name = id === null ? undefined : names.get(id);
	return id === null || name === undefined ? null : { id, name };
}
