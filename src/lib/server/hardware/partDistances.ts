import type { Ledger } from '../ledger/openLedger';
import { buildDistances, type DistanceSum } from './distances';
import { listWheelRecords } from './wheels';

/** How far one piece came: over all builds and wheels where it bears a serial, else in one build. */
export interface PartDistance extends DistanceSum {
	partId: number;
	/** '' = it bears none: then nobody can tell whether the piece in another build is the same one */
	serial: string;
	builds: { buildId: number; wheelId: number; wheel: string; totalM: number }[];
}

/**
 * Distance of every part that is on a bill. Pieces with a serial are followed from build to build and from
 * wheel to wheel; without one each build stands for itself.
 */
export function partDistances(ledger: Ledger): PartDistance[] {
	const ofBuild = new Map<number, ReturnType<typeof buildDistances>>();
	for (const one of buildDistances(ledger))
		ofBuild.set(one.buildId, [...(ofBuild.get(one.buildId) ?? []), one]);
	const wheels = new Map(listWheelRecords(ledger).map(({ id, name }) => [id, name]));
	const lines = ledger.database
		.prepare<[], { buildId: number; partId: number; serial: string }>(
			`SELECT DISTINCT build_id AS buildId, part_id AS partId, lower(serial) AS serial FROM build_part
			ORDER BY part_id, serial, build_id`
		)
		.all();
	const pieces = new Map<string, PartDistance>();
	for (const { buildId, partId, serial } of lines) {
		const key = serial === '' ? `${partId} in ${buildId}` : `${partId} no. ${serial}`;
		const piece = pieces.get(key) ?? { partId, serial, recordedM: 0, unloggedM: 0, totalM: 0, builds: [] };
		for (const { wheelId, recordedM, unloggedM, totalM } of ofBuild.get(buildId) ?? []) {
			piece.recordedM += recordedM;
			piece.unloggedM += unloggedM;
			piece.totalM += totalM;
			piece.builds.push({ buildId, wheelId, wheel: wheels.get(wheelId) ?? '', totalM });
		}
		pieces.set(key, piece);
	}
	return [...pieces.values()];
}
