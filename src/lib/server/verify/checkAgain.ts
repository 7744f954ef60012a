import type Database from 'better-sqlite3';
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { AnalysedFile, ResultDetail } from '../../../jobs/analysis/messages';
import { sourceColumns } from '../columns/sourceColumns';
import { readLimits } from '../ledger/programLimits';
import { AnalysisChild } from '../queue/analysisChild';
import { analyseFileEntry } from '../queue/analyseFileEntry';
import { sourcePath } from '../store/sourceStore';
import { breathe } from './breathe';
import { PartFindings } from './verifyReport';

interface StoredResult {
	rideId: number;
	sha256: string;
	fileName: string;
	startedMs: number;
	totalM: number;
	observedM: number;
	drivenM: number;
	detail: string;
}
interface StoredEvent {
	startS: number;
	kind: string;
	overrunCrankDeg: number;
}

/** the same program on the same bytes gives the same figures, but for the last digits on other machines */
const RELATIVE = 1e-6;

/**
 * Analyses a few rides again from their sources, drawn by a seed, and holds the figures against those that are
 * stored. Only results of this program's version can be made again.
 *
 * @param seed any text; the same seed draws the same rides
 */
export async function checkAgain(
	dataFolder: string,
	database: Database.Database,
	options: { sample: number; seed: string }
): Promise<PartFindings> {
	const found = new PartFindings();
	const child = new AnalysisChild(analyseFileEntry());
	try {
		for (const stored of drawRides(database, options)) {
			const path = sourcePath(dataFolder, stored.sha256);
			if (!existsSync(path)) continue;
			const startedMs = performance.now();
			const { bike = {}, columns } = JSON.parse(stored.detail) as Pick<ResultDetail, 'bike' | 'columns'>;
			const outcome = await child.analyse({
				path,
				fileName: stored.fileName,
				bike,
				limits: readLimits(),
				// results of older programs do not say it
				columns: columns ?? sourceColumns(database, stored.sha256)
			});
			found.checked++;
			const subject = `ride ${stored.rideId}`;
			if (outcome.kind === 'analysed') compare(database, stored, outcome.file, subject, found);
			else if (outcome.kind === 'refused')
				found.damage(subject, `Its file is refused now: ${outcome.refusal.sentence}`);
			else found.note(subject, 'Analysing it again broke off; nothing can be said about it.');
			await breathe(startedMs);
		}
	} finally {
		child.stop();
	}
	return found;
}

function drawRides(
	database: Database.Database,
	{ sample, seed }: { sample: number; seed: string }
): StoredResult[] {
	const ids = database
		.prepare<[number], { id: number; sha256: string }>(
			`SELECT r.id, r.sha256 FROM ride r JOIN result s ON s.ride_id = r.id AND s.version = ?
			WHERE r.sha256 NOT IN (SELECT sha256 FROM erased_source)`
		)
		.all(ANALYSIS_VERSION)
		.map(({ id, sha256 }) => ({ id, drawn: createHash('sha256').update(`${seed} ${sha256}`).digest('hex') }))
		.sort((a, b) => (a.drawn < b.drawn ? -1 : 1))
		.slice(0, sample);
	const read = database.prepare<[number, number], StoredResult>(
		`SELECT r.id AS rideId, r.sha256, r.file_name AS fileName, coalesce(r.recorded_start_ms, r.started_ms) AS startedMs,
			s.total_m AS totalM, s.observed_m AS observedM, s.driven_m AS drivenM, d.detail
		FROM ride r JOIN result s ON s.ride_id = r.id AND s.version = ?
		JOIN result_detail d ON d.ride_id = s.ride_id AND d.version = s.version WHERE r.id = ?`
	);
	return ids.flatMap(({ id }) => read.get(ANALYSIS_VERSION, id) ?? []);
}

function compare(
	database: Database.Database,
	stored: StoredResult,
	file: AnalysedFile,
	subject: string,
	found: PartFindings
): void {
	const differs = (what: string, now: number, before: number) => {
		if (Math.abs(now - before) > RELATIVE * Math.max(1, Math.abs(before)))
			found.damage(subject, `Analysed again, ${what} is ${now} instead of ${before}.`);
	};
	differs('its start', Math.round(file.startedAtMs), stored.startedMs);
	differs('its distance in metres', file.totalM, stored.totalM);
	differs('its observed distance in metres', file.observedM, stored.observedM);
	differs('its driven distance in metres', file.drivenM, stored.drivenM);
	const events = database
		.prepare<[number, number], StoredEvent>(
			`SELECT start_s AS startS, kind, overrun_crank_deg AS overrunCrankDeg FROM slip_event
			WHERE ride_id = ? AND version = ? ORDER BY start_s, kind`
		)
		.all(stored.rideId, ANALYSIS_VERSION);
	differs('its number of events', file.events.length, events.length);
	const again = [...file.events].sort((a, b) => a.startS - b.startS || (a.kind < b.kind ? -1 : 1));
	if (again.length !== events.length) return;
	for (const [i, { startS, overrunCrankDeg }] of events.entries()) {
		differs(`the start of event ${i + 1} in seconds`, again[i].startS, startS);
		differs(
			`the overrun of event ${i + 1} in crank degrees`,
			again[i].overrunCrankDeg.value,
			overrunCrankDeg
		);
	}
}
