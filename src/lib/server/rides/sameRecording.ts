/** A recording as far as it takes to recognise it: see rideSignature in src/jobs. */
export interface Recording {
	/** milliseconds since 1970 UTC */
	readonly startedMs: number;
	/** pairs of speed (cm/s) and cadence (rpm), 16 bit little-endian, every 10 s UTC; -1 = missing */
	readonly signature: Uint8Array;
}

const STEP_MS = 10_000;
const SPEED_TOLERANCE_CMPS = 20;
const CADENCE_TOLERANCE_RPM = 2;
/** shorter overlaps prove nothing */
const LEAST_SAMPLES = 6;
const LEAST_OVERLAP = 0.9;
const LEAST_AGREEMENT = 0.95;

/**
 * Whether two files hold the same ride: where both recorded, speed and cadence agree nearly always, and
 * they cover nearly the same time. Riders in a group have the same start and speed but not the same
 * cadence.
 *
 * @returns false when too little overlaps to tell
 * Source: common practice, no source; thresholds allow for the rounding of export formats.
 */
export function sameRecording(a: Recording, b: Recording): boolean {
	const first = samples(a);
	const second = samples(b);
	const shift = (second.firstMs - first.firstMs) / STEP_MS;
	const shorter = Math.min(first.count, second.count);
	let shared = 0;
	let agreeing = 0;
	let moving = 0;
	for (let index = 0; index < first.count; index++) {
		const other = index - shift;
		if (other < 0 || other >= second.count) continue;
		shared++;
		const [speedA, cadenceA] = first.at(index);
		const [speedB, cadenceB] = second.at(other);
		if (speedA > 0 && cadenceA > 0) moving++;
		const agrees =
			near(speedA, speedB, SPEED_TOLERANCE_CMPS) && near(cadenceA, cadenceB, CADENCE_TOLERANCE_RPM);
		if (agrees) agreeing++;
	}
	return (
		shared >= LEAST_SAMPLES &&
		moving >= LEAST_SAMPLES &&
		shared >= shorter * LEAST_OVERLAP &&
		agreeing >= shared * LEAST_AGREEMENT
	);
}

/** A value that only one of them has does not speak against it: formats leave out different things. */
function near(a: number, b: number, tolerance: number): boolean {
	return a < 0 || b < 0 || Math.abs(a - b) <= tolerance;
}

function samples({ startedMs, signature }: Recording) {
	const view = new DataView(signature.buffer, signature.byteOffset, signature.byteLength);
	return {
		firstMs: Math.ceil(startedMs / STEP_MS) * STEP_MS,
		count: signature.byteLength >> 2,
		at: (index: number): [number, number] => [
			view.getInt16(index * 4, true),
			view.getInt16(index * 4 + 2, true)
		]
	};
}
