/** Crank and wheel of a logger on one clock. */
export interface LoggerTable {
	readonly timeS: Float64Array;
	readonly crankRpm: Float64Array;
	readonly wheelRpm: Float64Array;
}

export interface LoggerOverrun {
	/** samples added up: from the first that leads to the first that is back in the ratio */
	readonly from: number;
	readonly to: number;
	readonly crankDeg: number;
	readonly lowerDeg: number;
	readonly upperDeg: number;
	/** greatest lead as a share of the cadence that the wheel would need */
	readonly lead: number;
}

/** The crank must run ahead by this share to go on. */
const AHEAD = 0.025;
/** Before the onset the crank leads when it is ahead by this share, and by so many times the scatter. */
const LEAD_IN = 0.015;
/** In multiples of the scatter of the ratio (estimate). */
const LEAD_IN_SCATTERS = 3;
/** The driver has caught once the lead falls below this share of its greatest: a free crank is not slowed so suddenly. */
const CAUGHT = 0.8;
/** After a clean catch nothing is left of the lead in the sample that follows; wind-up dies away over several. */
const LEFT_AFTER_CATCH = 0.05;
/** What limits stand for beside noise: calibration of two encoders against each other; common practice, no source. */
const RELATIVE_DOUBT = 0.06;

/**
 * How far the crank ran ahead of the wheel, and between which limits.
 * The overrun ends where the driver is caught. The sample in which that happens belongs to it; what a crank still
 * gains while its speed dies away over several samples is wind-up of chain, crank and frame and is left out. The
 * limits hold both readings: without the last sample of the lead, and with all until crank and wheel are back.
 *
 * @param table the recording
 * @param before first sample that may belong to the lead-in
 * @param onset first sample that surely leads
 * @param ratio wheel turns per crank turn before it
 * @param scatter typical relative scatter of the ratio
 * @param longestS the longest an overrun may take
 * @returns null when crank and wheel do not come together again within that time
 */
export function loggerOverrun(
	{ timeS, crankRpm, wheelRpm }: LoggerTable,
	before: number,
	onset: number,
	ratio: number,
	scatter: number,
	longestS: number
): LoggerOverrun | null {
	const lead = (i: number) => crankRpm[i] - wheelRpm[i] / ratio;
	const gained = (i: number) => 6 * lead(i) * (timeS[i + 1] - timeS[i]);
	let from = onset;
	const leads = Math.max(LEAD_IN, LEAD_IN_SCATTERS * scatter);
	while (from - 1 > before && lead(from - 1) > leads * crankRpm[from - 1]) from--;
	let total = 0;
	for (let i = from; i < onset; i++) total += gained(i);
	let to = onset;
	let greatest = 0;
	let caughtDeg = total;
	let lastDeg = 0;
	let caught = onset;
	while (lead(to) > AHEAD * (wheelRpm[to] / ratio)) {
		if (to + 1 >= timeS.length || timeS[to] - timeS[onset] >= longestS) return null;
		total += gained(to);
		if (lead(to) >= CAUGHT * greatest) {
			greatest = Math.max(greatest, lead(to));
			caughtDeg = total;
			lastDeg = gained(to);
			caught = to;
		}
		to++;
	}
	// the sample in which a clutch catches cleanly is a part of the overrun, and nothing is left after it
	const clean = to <= caught + 2 && !(lead(caught + 2) > LEFT_AFTER_CATCH * greatest);
	const crankDeg = clean ? total : caughtDeg;
	const doubtDeg = 1.645 * 6 * crankRpm[onset] * scatter * (timeS[to] - timeS[from]) + RELATIVE_DOUBT * total;
	return {
		from,
		to,
		crankDeg,
		lowerDeg: Math.max(0, caughtDeg - lastDeg - doubtDeg),
		// the driver may have been caught anywhere between the last sample that leads and the one after it
		upperDeg: total + 0.5 * lastDeg + doubtDeg,
		lead: greatest / (wheelRpm[caught] / ratio)
	};
}
