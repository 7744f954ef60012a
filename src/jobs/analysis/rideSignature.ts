import type { DriveTraces } from '$lib/slip/analysis';

/** seconds between two samples of a signature */
export const SIGNATURE_STEP_S = 10;

/**
 * A small print of a recording by which the same ride is recognised in other bytes: speed (cm/s) and
 * cadence (rpm) at every whole multiple of 10 s UTC, so that two exports line up even if one of them
 * begins later. Pairs of 16-bit little-endian numbers, -1 = missing.
 *
 * @param startedAtMs instant of the first record
 */
export function rideSignature(startedAtMs: number, traces: DriveTraces): Uint8Array {
	const firstS = Math.ceil(startedAtMs / 1000 / SIGNATURE_STEP_S) * SIGNATURE_STEP_S - startedAtMs / 1000;
	const numbers: number[] = [];
	for (let atS = firstS; Math.round(atS) < traces.speedMps.length; atS += SIGNATURE_STEP_S) {
		const index = Math.round(atS);
		numbers.push(whole(traces.speedMps[index] * 100), whole(traces.cadenceRpm[index]));
	}
	const bytes = new DataView(new ArrayBuffer(numbers.length * 2));
	numbers.forEach((number, index) => bytes.setInt16(index * 2, number, true));
	return new Uint8Array(bytes.buffer);
}

function whole(value: number): number {
	return Number.isFinite(value) ? Math.min(32767, Math.max(0, Math.round(value))) : -1;
}
