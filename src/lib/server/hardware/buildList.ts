import type { Ledger } from '../ledger/openLedger';
import { programmeRows } from '../rates/programmeRows';
import type { BuildRow } from '../views';
import { listBuildRecords } from './builds';

/** A build in the list of builds. */
export interface BuildListRow extends Pick<
	BuildRow,
	'id' | 'name' | 'state' | 'wheels' | 'rides' | 'totalM' | 'example'
> {
	revision: number;
	/** the build that this one goes back to */
	predecessor: { id: number; name: string } | null;
	/** lines of its bill of parts */
	parts: number;
}

/** Every build, in the order in which they were made. */
export function buildList(ledger: Ledger): BuildListRow[] {
	const records = new Map(listBuildRecords(ledger).map((build) => [build.id, build]));
	const lines = new Map(
		ledger.database
			.prepare<[], { id: number; parts: number }>(
				'SELECT build_id AS id, count(*) AS parts FROM build_part GROUP BY build_id'
			)
			.all()
			.map(({ id, parts }) => [id, parts])
	);
	return programmeRows(ledger).map(({ id, name, state, wheels, rides, totalM, example }) => {
		const { revision, revisionOf, copiedFrom } = records.get(id)!;
		const before = records.get(revisionOf ?? copiedFrom ?? -1);
		return {
			...{ id, name, state, wheels, rides, totalM, example, revision },
			predecessor: before ? { id: before.id, name: before.name } : null,
			parts: lines.get(id) ?? 0
		};
	});
}
