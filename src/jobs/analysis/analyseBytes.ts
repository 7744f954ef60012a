import type { Bike } from '$lib/drivetrain/bike';
import { DEFAULT_CIRCUMFERENCE_M } from '$lib/drivetrain/nameGears';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import { decodeRide } from '$lib/ride/decodeRide';
import type { ReadLimits } from '$lib/ride/limits';
import { meanTemperature } from '$lib/ride/meanTemperature';
import { recordingKind } from '$lib/ride/recordingKind';
import type { RideWarning } from '$lib/ride/ride';
import { analyseRide } from '$lib/slip/analyseRide';
import type { AnalysedFile } from './messages';
import { packOwnRate } from './packOwnRate';
import { packTraces } from './packTraces';
import { rideSignature } from './rideSignature';

/**
 * From a file's bytes to all that the ledger keeps of it.
 *
 * @param bike what is known of the bike; kept with the result
 * @param columns of a logger's table, as a person named them; kept with the result
 * @throws RideRefused when the file is not taken as a ride
 */
export async function analyseBytes(
	bytes: Uint8Array,
	fileName: string,
	bike: Bike = {},
	limits?: ReadLimits,
	columns: ColumnMapping | null = null
): Promise<AnalysedFile> {
	const ride = await decodeRide(bytes, fileName, limits, columns);
	const analysis = analyseRide(ride, bike);
	return {
		format: ride.format,
		startedAtMs: ride.startedAtMs,
		localOffsetS: ride.localOffsetS,
		durationS: ride.durationS,
		trainer: ride.trainer,
		motorAssisted: ride.motorAssisted,
		signature: rideSignature(ride.startedAtMs, analysis.traces),
		analysisVersion: analysis.analysisVersion,
		totalM: analysis.totalM,
		observedM: analysis.observedM,
		drivenM: analysis.drivenM,
		observed: analysis.observed,
		events: analysis.events,
		exposure: analysis.exposure,
		recording: recordingKind(ride),
		detail: {
			gears: analysis.gears,
			warnings: eachOnce([...ride.warnings, ...analysis.warnings]),
			sensors: ride.sensors,
			marksS: analysis.marksS,
			shifts: ride.gearEvents,
			gaps: analysis.gaps,
			pauses: ride.pauses,
			bike,
			...(columns ? { columns } : {}),
			learning: analysis.learning,
			temperature: meanTemperature(ride)
		},
		channels: [
			...packTraces(ride, analysis.traces),
			...packOwnRate(ride, analysis.traces, analysis.gears, bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M)
		]
	};
}

/** The analysis may hand on warnings of the file. */
function eachOnce(warnings: readonly RideWarning[]): RideWarning[] {
	const seen = new Set<string>();
	return warnings.filter(({ code, detail }) => {
		const key = `${code}\n${detail}`;
		if (seen.has(key)) return false;
		seen.add(key);
		return true;
	});
}
