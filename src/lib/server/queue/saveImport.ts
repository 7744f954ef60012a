import type { AnalysedFile } from '../../../jobs/analysis/messages';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findPersonAsActor } from '../people/people';
import { findTwin } from '../rides/findTwin';
import { onlyWheelAt } from '../rides/onlyWheelAt';
import { faultPoint } from '../store/faultPoint';
import type { QueuedImport } from './importQueue';
import { holdsLease, type LeaseHolder } from './lease';
import { queueTransaction } from './queueTransaction';
import { readHints } from './rideHints';
import { removeStrayChannels, saveChannels } from './saveChannels';
import { saveResult } from './saveResult';

interface ImportRow {
	hints: string;
	actorId: number;
	example: number;
	stage: string;
	owner: string | null;
}

/**
 * Makes an analysed file a ride of the ledger. The traces go first, because they can be made again; then
 * ride, result, events and the import's stage become visible in one transaction, or none of it does.
 *
 * @returns id of the ride; null when this runner lost its lease meanwhile and nothing was written
 */
export function saveImport(
	ledger: Ledger,
	holder: LeaseHolder,
	queued: QueuedImport,
	file: AnalysedFile
): number | null {
	faultPoint('analysed');
	saveChannels(ledger, queued.sha256, file);
	faultPoint('channels-written');
	const rideId = queueTransaction(ledger, (): number | null => {
		const row = readImport(ledger, queued.id);
		const mine = row?.stage === 'analysing' && row.owner === holder.owner;
		if (!row || !mine || !holdsLease(ledger, 'runner', holder)) return null;
		const known = ledger.database
			.prepare<[string], { id: number }>('SELECT id FROM ride WHERE sha256 = ?')
			.get(queued.sha256);
		const id = known?.id ?? addRide(ledger, queued, row, file);
		finishImports(ledger, queued, id, known !== undefined);
		return id;
	});
	if (rideId === null) removeStrayChannels(ledger, queued.sha256, file.analysisVersion);
	faultPoint('done');
	return rideId;
}

function readImport(ledger: Ledger, importId: number): ImportRow | undefined {
	return ledger.database
		.prepare<[number], ImportRow>(
			'SELECT hints, actor_id AS actorId, example, stage, owner FROM import WHERE id = ?'
		)
		.get(importId);
}

function addRide(ledger: Ledger, queued: QueuedImport, row: ImportRow, file: AnalysedFile): number {
	const hints = readHints(ledger, row.hints);
	const endMs = file.startedAtMs + file.durationS * 1000;
	const wheelId = hints.wheelId ?? onlyWheelAt(ledger, file.startedAtMs, endMs);
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO ride (sha256, file_name, format, started_ms, duration_s, local_offset_s, file_trainer,
				motor_assisted, trainer, wet, laps_mean_slips, surface, load_kg, wheel_id, bike_id, rider_id, twin_of,
				example, created_ms)
			VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`
		)
		.run(
			queued.sha256,
			queued.fileName,
			file.format,
			Math.round(file.startedAtMs),
			file.durationS,
			file.localOffsetS === null ? null : Math.round(file.localOffsetS),
			asNumber(file.trainer),
			asNumber(file.motorAssisted),
			asNumber(hints.trainer),
			asNumber(hints.wet),
			asNumber(hints.lapsMeanSlips),
			hints.surface ?? null,
			hints.loadKg ?? null,
			wheelId,
			hints.bikeId ?? null,
			hints.riderId ?? null,
			findTwin(ledger, file),
			row.example,
			ledger.now()
		);
	const rideId = Number(lastInsertRowid);
	ledger.database.prepare('INSERT INTO ride_signature VALUES (?, ?)').run(rideId, file.signature);
	saveResult(ledger, rideId, file);
	const actor = findPersonAsActor(ledger, row.actorId);
	if (actor) leaveTrail(ledger, actor, 'handed in', 'ride', rideId, { fileName: queued.fileName, wheelId });
	return rideId;
}

/** Also of those that handed in the same content while this one was under way, or failed at it before. */
function finishImports(ledger: Ledger, queued: QueuedImport, rideId: number, wasKnown: boolean): void {
	const now = ledger.now();
	ledger.database
		.prepare('UPDATE import SET stage = ?, ride_id = ?, owner = NULL, changed_ms = ? WHERE id = ?')
		.run(wasKnown ? 'already in the ledger' : 'done', rideId, now, queued.id);
	ledger.database
		.prepare(
			`UPDATE import SET stage = 'already in the ledger', ride_id = ?, code = NULL, sentence = NULL,
				technical = NULL, changed_ms = ?
			WHERE sha256 = ? AND ride_id IS NULL AND stage IN ('already in the ledger', 'failed', 'waiting')`
		)
		.run(rideId, now, queued.sha256);
}

function asNumber(value: boolean | null | undefined): number | null {
	return value == null ? null : value ? 1 : 0;
}
