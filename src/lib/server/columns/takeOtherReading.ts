import type { AnalysedFile, ResultDetail } from '../../../jobs/analysis/messages';
import { canonicalJson } from '$lib/release/canonicalJson';
import type { Ledger } from '../ledger/openLedger';
import { findTwin } from '../rides/findTwin';
import { setAsideVerdicts } from './setAsideVerdicts';

/**
 * Lets a new result take its place; where its table was read by other columns than before, the ride's own row follows
 * (start, length, which other recording it looks like), and verdicts on events that are others now are asked again.
 * A start that a person stated stays. Belongs in the caller's transaction.
 *
 * @param save writes the result
 */
export function takeOtherReading(
	ledger: Ledger,
	rideId: number,
	file: AnalysedFile,
	save: () => unknown
): void {
	if (!readOtherwise(ledger, rideId, file)) {
		save();
		return;
	}
	const { database } = ledger;
	database
		.prepare(
			`UPDATE ride SET started_ms = iif(recorded_start_ms IS NULL, @startMs, started_ms),
				recorded_start_ms = iif(recorded_start_ms IS NULL, NULL, @startMs), duration_s = @durationS,
				local_offset_s = @offsetS, twin_of = iif(twin_decision IS NULL, @twin, twin_of) WHERE id = @rideId`
		)
		.run({
			rideId,
			startMs: Math.round(file.startedAtMs),
			durationS: file.durationS,
			offsetS: file.localOffsetS === null ? null : Math.round(file.localOffsetS),
			twin: findTwin(ledger, file, rideId)
		});
	database.prepare('UPDATE ride_signature SET signature = ? WHERE ride_id = ?').run(file.signature, rideId);
	save();
	setAsideVerdicts(ledger, rideId, file.analysisVersion);
}

function readOtherwise(ledger: Ledger, rideId: number, file: AnalysedFile): boolean {
	const stored = ledger.database
		.prepare<[number, number], string>('SELECT detail FROM result_detail WHERE ride_id = ? AND version = ?')
		.pluck()
		.get(rideId, file.analysisVersion);
	if (stored === undefined) return false;
	const before = (JSON.parse(stored) as ResultDetail).columns;
	// results of older programs do not say by which columns they were read; those were never changed
	return before !== undefined && canonicalJson(before) !== canonicalJson(file.detail.columns ?? null);
}
