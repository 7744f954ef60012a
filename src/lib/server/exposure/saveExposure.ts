import type { ExposureAmount } from '$lib/slip/exposure';
import type { AnalysedFile } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';

const amounts = (row: ExposureAmount) => [
	row.drivenM,
	row.drivenS,
	row.observedM,
	row.observedS,
	row.drivenTurns,
	row.observedTurns,
	row.pickUps,
	row.observedPickUps
];
const holders = (count: number) => Array<string>(count).fill('?').join(', ');

/** Writes what a result was exposed to, its laps and its kind of recording. In the caller's transaction. */
export function saveExposure(ledger: Ledger, rideId: number, file: AnalysedFile): void {
	const { database } = ledger;
	const version = file.analysisVersion;
	const addCell = database.prepare(`INSERT INTO exposure_cell VALUES (${holders(15)})`);
	file.exposure.cells.forEach((row, cell) =>
		addCell.run(rideId, version, cell, row.torqueFromNm, row.torqueToNm, row.gear, row.ratio, ...amounts(row))
	);
	const addHour = database.prepare(`INSERT INTO exposure_hour VALUES (${holders(11)})`);
	for (const row of file.exposure.hours) addHour.run(rideId, version, row.hour, ...amounts(row));
	// two laps at one instant are one
	const addMark = database.prepare(`INSERT OR IGNORE INTO rider_mark VALUES (${holders(4)})`);
	for (const { timeS, observed } of file.exposure.marks)
		addMark.run(rideId, version, timeS, observed ? 1 : 0);
	database
		.prepare(`INSERT INTO recording_kind VALUES (${holders(4)})`)
		.run(rideId, version, file.recording.speedFrom, file.recording.rhythm);
}
