import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import { median, medianBetween } from '$lib/drivetrain/median';
import type { Candidate } from './findCandidates';
import { LEAST_REPORTED_DEG } from './reportLimits';

/** How a recording's power and cadence follow what happens; NaN where too little was pressed to say. */
export interface RideResponse {
	/** correlation of one second's change of power with the next, -1 to 1 */
	readonly power: number;
	/** the same of cadence */
	readonly cadence: number;
	/** share of pressing seconds that repeat the power of the second before */
	readonly powerHeld: number;
	/** share of the changes of cadence that follow one in the second before */
	readonly cadenceRuns: number;
	/** median change of power from one pressing second to the next, as a share of itself */
	readonly powerScatter: number;
	/** how often power fell from that of steady pressing to nothing */
	readonly falls: number;
	/** how many of them took a second at most */
	readonly quickFalls: number;
}

/** Above this the power of a second is mostly a mean of the seconds before it (0.34 to 0.54 for means over 3 s). */
const SLOW_CORRELATION = 0.3;
/** A device that renews its power every two or three seconds repeats a half or two thirds of its values. */
const SLOW_HELD = 0.45;
/** Share of quick falls of the gentlest rider seen with a prompt meter (15 to 92 %); a mean over three seconds shows none but by its scatter. */
const PROMPT_QUICK_FALLS = 0.15;
/** Of slow meters at most so many falls were quick. */
const SLOW_QUICK_FALLS = 0.08;
/** Quantile of the normal distribution: so few quick falls would come by chance once in twenty rides. */
const ONE_IN_TWENTY = 1.64;

/**
 * Whether the power meter reacts too slowly to show the loss of drive in a slip, which lasts a few tenths of a
 * second. Measured on labelled and generated rides: prompt devices repeat at most 15 % and correlate at most 0.28;
 * scatter hides the correlation of a mean over three seconds (0.18, -0.03), but not how slowly it falls.
 */
export function isPowerSlow({ power, powerHeld, falls, quickFalls }: RideResponse): boolean {
	if (power > SLOW_CORRELATION || powerHeld > SLOW_HELD) return true;
	const expected = PROMPT_QUICK_FALLS * falls;
	const scatter = Math.sqrt(expected * (1 - PROMPT_QUICK_FALLS));
	return quickFalls < Math.min(expected - ONE_IN_TWENTY * scatter, SLOW_QUICK_FALLS * falls);
}

/** Devices that renew their cadence every second let 35 to 96 % of its changes follow one another, others none. */
const HELD_RUNS = 0.15;

/** Whether cadence is renewed every two or three seconds only: a slip of a few tenths of a second falls between. */
export function isCadenceHeld({ cadenceRuns }: RideResponse): boolean {
	return cadenceRuns < HELD_RUNS;
}

/** Whether this recording follows what happens too slowly to show a slip, whatever the noise. */
export function isTooSlow(response: RideResponse): boolean {
	return isPowerSlow(response) || isCadenceHeld(response);
}

/** So long before and after a large excess power and cadence are moved by it. */
const MOVED_BEFORE_S = 2;
const MOVED_AFTER_S = 6;

/**
 * How slowly power and cadence of this recording follow what happens: the correlation of one second's change with
 * the next. Independent scatter gives -0.5; a mean over three seconds gives 0.67 for what the rider does, because
 * each value shares two thirds with the one before. Seconds around large excesses are left out, because a ride's
 * slips must not decide what of it is observed.
 *
 * @param signals the ride's signals
 * @param candidates the ride's excesses, slips or not
 * @returns correlations, shares from 0 to 1 and counts
 */
export function rideResponse(signals: DriveSignals, candidates: readonly Candidate[]): RideResponse {
	const calm = Uint8Array.from(signals.pressing);
	for (const { from, to, carefulDeg, generousDeg } of candidates) {
		if (Math.max(carefulDeg, generousDeg) < LEAST_REPORTED_DEG) continue;
		calm.fill(0, Math.max(0, from - MOVED_BEFORE_S), to + MOVED_AFTER_S + 1);
	}
	return {
		power: changeCorrelation(signals.grid.powerW, calm),
		cadence: changeCorrelation(signals.grid.cadenceRpm, calm),
		powerHeld: heldShare(signals.grid.powerW, calm),
		cadenceRuns: changesInRuns(signals.grid.cadenceRpm, calm),
		powerScatter: changeOfPower(signals.grid.powerW, calm),
		...countFalls(signals.grid.powerW)
	};
}

function changesInRuns(values: Float64Array, calm: Uint8Array): number {
	let changes = 0;
	let inRuns = 0;
	for (let t = 2; t < values.length; t++) {
		if (!calm[t] || !calm[t - 1] || !calm[t - 2] || !changed(values, t)) continue;
		changes++;
		if (changed(values, t - 1)) inRuns++;
	}
	return changes > LEAST_CHANGES ? inRuns / changes : NaN;
}

const LEAST_CHANGES = 50;

const changed = (values: Float64Array, t: number) => Math.abs(values[t] - values[t - 1]) > 0;

function changeOfPower(powerW: Float64Array, calm: Uint8Array): number {
	const changes: number[] = [];
	for (let t = 1; t < powerW.length; t++)
		if (calm[t] && calm[t - 1]) changes.push(relativeChange(powerW[t - 1], powerW[t]));
	return median(changes);
}

/** Below this a change of power is set against it, W: shares of next to nothing say nothing. */
const LEAST_COMPARED_W = 40;

/** How far power changed from one second to the next, as a share of the greater of both. */
export function relativeChange(beforeW: number, afterW: number): number {
	return Math.abs(afterW - beforeW) / Math.max(LEAST_COMPARED_W, beforeW, afterW);
}

/** Power of steady pressing is the median of so many seconds that end so long before the first one without power. */
const LEVEL_S = 5;
const LEVEL_ENDS_S = 3;
const LEAST_LEVEL_W = 80;
/** From this share of the level on power counts as falling. */
const FALLING_SHARE = 0.85;

/** Slips may be among the falls: with a prompt meter they are quick, and with a slow one hardly any fall looks quick for them. */
function countFalls(powerW: Float64Array): { falls: number; quickFalls: number } {
	let falls = 0;
	let quickFalls = 0;
	for (let t = LEVEL_S + LEVEL_ENDS_S; t < powerW.length; t++) {
		if (powerW[t] !== 0 || !(powerW[t - 1] > 0)) continue;
		const from = t - LEVEL_ENDS_S - LEVEL_S;
		if (!powerW.subarray(from, from + LEVEL_S).every((watts) => watts > 0)) continue;
		const levelW = medianBetween(powerW, from, from + LEVEL_S);
		if (!(levelW >= LEAST_LEVEL_W)) continue;
		let between = 0;
		while (between < LEVEL_ENDS_S && powerW[t - 1 - between] < FALLING_SHARE * levelW) between++;
		falls++;
		if (between <= 1) quickFalls++;
	}
	return { falls, quickFalls };
}

function changeCorrelation(values: Float64Array, calm: Uint8Array): number {
	let products = 0;
	let squares = 0;
	let count = 0;
	for (let t = 2; t < values.length; t++) {
		if (!calm[t] || !calm[t - 1] || !calm[t - 2]) continue;
		const change = values[t] - values[t - 1];
		const earlier = values[t - 1] - values[t - 2];
		const product = change * earlier;
		if (Number.isNaN(product)) continue;
		products += product;
		squares += 0.5 * (change * change + earlier * earlier);
		count++;
	}
	return count > 200 ? products / squares : NaN;
}

function heldShare(values: Float64Array, calm: Uint8Array): number {
	let same = 0;
	let count = 0;
	for (let t = 1; t < values.length; t++) {
		if (!calm[t] || !calm[t - 1] || Number.isNaN(values[t])) continue;
		count++;
		if (values[t] === values[t - 1]) same++;
	}
	return count > 200 ? same / count : NaN;
}
