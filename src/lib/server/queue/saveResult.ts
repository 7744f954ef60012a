import type { AnalysedFile } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { saveExposure } from '../exposure/saveExposure';
import { attachVerdicts } from '../review/attachVerdicts';
import { clearResult, removeEvents } from './clearResult';
import { readingFacts } from './readingFacts';
import { saveParts } from '../rides/rideParts';

/**
 * Writes one result of a ride with its events and stretches, in place of the one of the same version if there
 * is one. Belongs in the caller's transaction.
 */
export function saveResult(ledger: Ledger, rideId: number, file: AnalysedFile): void {
	const { database } = ledger;
	const version = file.analysisVersion;
	const before = clearResult(ledger, rideId, version);
	const facts = readingFacts(file.detail.bike ?? {}, file.detail.columns ?? null);
	database
		.prepare(
			`INSERT INTO result (ride_id, version, total_m, observed_m, driven_m, computed_ms, bike_facts)
			VALUES (?, ?, ?, ?, ?, ?, ?)
			ON CONFLICT (ride_id, version) DO UPDATE SET total_m = excluded.total_m,
				observed_m = excluded.observed_m, driven_m = excluded.driven_m,
				computed_ms = excluded.computed_ms, bike_facts = excluded.bike_facts`
		)
		.run(rideId, version, file.totalM, file.observedM, file.drivenM, ledger.now(), facts);
	database
		.prepare('INSERT INTO result_detail VALUES (?, ?, ?)')
		.run(rideId, version, JSON.stringify(file.detail));
	const addStretch = database.prepare('INSERT OR IGNORE INTO observed_stretch VALUES (?, ?, ?, ?, ?, ?)');
	for (const { startS, endS, startM, endM } of file.observed)
		addStretch.run(rideId, version, startS, endS, startM, endM);
	saveExposure(ledger, rideId, file);
	const addEvent = database.prepare(
		`INSERT INTO slip_event (ride_id, version, start_s, end_s, at_m, kind, overrun_crank_deg,
			overrun_crank_lower_deg, overrun_crank_upper_deg, overrun_hub_deg, gear, hub_torque_nm,
			hub_torque_lower_nm, hub_torque_upper_nm, power_lost, strength, observed, reasons)
		VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`
	);
	for (const event of file.events) {
		const { overrunCrankDeg, hubTorqueNm } = event;
		addEvent.run(
			rideId,
			version,
			event.startS,
			event.endS,
			event.atM,
			event.kind,
			overrunCrankDeg.value,
			overrunCrankDeg.lower,
			overrunCrankDeg.upper,
			event.overrunHubDeg,
			event.gear?.label ?? null,
			hubTorqueNm?.value ?? null,
			hubTorqueNm?.lower ?? null,
			hubTorqueNm?.upper ?? null,
			event.powerLost,
			event.strength,
			event.observed ? 1 : 0,
			JSON.stringify(event.reasons)
		);
	}
	removeEvents(ledger, before);
	saveParts(ledger, rideId, version);
	attachVerdicts(ledger, rideId, version);
}
