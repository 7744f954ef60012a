import { serialClash, type SerialOnWheel } from '$lib/hardware/serialClash';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import { listBuildRecords } from './builds';
import { listPeriods } from './periodRows';
import { listWheelRecords } from './wheels';

/**
 * One piece cannot be in two hubs at once. Belongs at the end of every transaction that fits a build, moves
 * a fitted period or changes a bill: it looks at what would then stand.
 *
 * @throws LedgerRefusal conflict, naming the piece and where it is already
 */
export function refuseSerialClash(ledger: Ledger, buildId: number): void {
	const clash = serialClash(piecesOnWheels(ledger), buildId);
	if (!clash) return;
	const [mine, other] = clash;
	const builds = new Map(listBuildRecords(ledger).map(({ id, name }) => [id, name]));
	const wheels = new Map(listWheelRecords(ledger).map(({ id, name }) => [id, name]));
	const until = other.untilMs === null ? 'and still is' : `until ${inWorkshopZone(ledger, other.untilMs)}`;
	throw new LedgerRefusal(
		'conflict',
		`${mine.number} with serial ${mine.serial} is in the build "${builds.get(other.buildId)}" as well, which was on ${wheels.get(other.wheelId)} from ${inWorkshopZone(ledger, other.fromMs)} ${until}: one piece cannot be in two hubs at the same time.`
	);
}

function piecesOnWheels(ledger: Ledger): SerialOnWheel[] {
	const pieces = ledger.database
		.prepare<[], { buildId: number; number: string; serial: string }>(
			`SELECT b.build_id AS buildId, p.number, b.serial FROM build_part b JOIN part p ON p.id = b.part_id
			WHERE b.serial <> ''`
		)
		.all();
	return listPeriods(ledger).flatMap((period) =>
		pieces
			.filter(({ buildId }) => buildId === period.buildId)
			.map((piece) => ({
				...piece,
				periodId: period.id,
				wheelId: period.wheelId,
				fromMs: period.fromMs,
				untilMs: period.untilMs
			}))
	);
}
