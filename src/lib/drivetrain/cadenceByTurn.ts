/** Seconds of turning before a stop, and how fast, so that a slow last turn is not taken for one. */
const TURNING_RPM = 60;
/** A fall below this share of the cadence before begins a stop ... */
const FALLS_TO = 0.85;
/** ... when the crank stands within this time. */
const STANDS_WITHIN_S = 4;
/** Fewer stops say nothing (common practice, no source). */
const LEAST_STOPS = 15;
/** Sensors that mean over the second show a value in between at 0.4 to 0.7 of their stops, those by the turn at 0.0 to 0.3. */
const LARGEST_SHARE = 0.3;

/**
 * Whether this recording's cadence is measured turn by turn (one signal a crank turn) and not as a mean over
 * the second. A mean shows a part of the old cadence in the second in which the crank stops; a sensor that waits
 * for the next turn keeps the old value and then shows nothing. It matters for the size of a slip: a turn in
 * which the crank gained an angle is short, and its cadence stands for the whole second.
 * (Limits measured on labelled and generated rides whose sensor is known.)
 *
 * @param cadenceRpm cadence a second, NaN = not recorded
 * @returns true when at least 15 stops were seen and few show a value in between; false where too few say anything
 */
export function cadenceByTurn(cadenceRpm: Float64Array): boolean {
	let stops = 0;
	let between = 0;
	for (let t = 2; t + STANDS_WITHIN_S < cadenceRpm.length; t++) {
		const before = cadenceRpm[t - 1];
		if (!(before >= TURNING_RPM) || !(cadenceRpm[t - 2] >= TURNING_RPM)) continue;
		if (!(cadenceRpm[t] < FALLS_TO * before)) continue;
		let standing = t;
		while (standing < t + STANDS_WITHIN_S && cadenceRpm[standing] > 0) standing++;
		if (cadenceRpm[standing] !== 0) continue;
		stops++;
		if (cadenceRpm[t] > 0) between++;
	}
	return stops >= LEAST_STOPS && between <= LARGEST_SHARE * stops;
}
