import { at, type Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

/** Seconds before and after the peak that are read, with one more on each side for differences. */
export const WINDOW_BEFORE_S = 13;
export const WINDOW_AFTER_S = 17;
export const WINDOW_S = WINDOW_BEFORE_S + 1 + WINDOW_AFTER_S;
/** Length of each array of a window: the seconds read and one beside them on each side. */
export const READ_S = WINDOW_S + 2;

/** The seconds around a candidate as they were recorded, and what the ride says of them: parts of one list. */
export interface SlipWindow {
	readonly flat: Float32Array;
	readonly cadenceRpm: Float32Array;
	readonly speedMps: Float32Array;
	readonly powerW: Float32Array;
	/** ratios against the engaged one, ln: of the gear recorded, of the gear followed, of the bike's gear nearest; NaN = none */
	readonly recorded: Float32Array;
	readonly followed: Float32Array;
	readonly nearest: Float32Array;
	/** 1 in a second with a recorded shift */
	readonly shift: Float32Array;
	/** in the order of WINDOW_FACTS */
	readonly facts: Float32Array;
}

/** What is told of a candidate besides its seconds, by name. */
export const WINDOW_FACTS = [
	'engaged ratio',
	'lower ratio against engaged',
	'ratio noise',
	'power noise',
	'power around W',
	'usual power W',
	'first second against peak',
	'last second against peak',
	'size deg',
	'irregular recording',
	'cadence by the turn',
	'power follows slowly',
	'cadence follows slowly',
	'ratio scatter of the ride',
	'careful deg',
	'generous deg',
	'cadence dips of the ride',
	'ratio dips of the ride',
	'recorded shifts known'
] as const;
export const FACT = Object.fromEntries(WINDOW_FACTS.map((name, i) => [name, i])) as Record<
	(typeof WINDOW_FACTS)[number],
	number
>;
/** Fewer recorded shifts than this say nothing of the gears. */
const LEAST_SHIFTS = 5;

/**
 * Takes the seconds around a candidate out of its ride.
 *
 * @param context what was learned of the ride
 * @param placed the candidate in its place
 * @param sizeDeg the size that decides whether it is reported, crank degrees
 * @returns seconds from 14 before the peak to 18 after it; NaN = not recorded
 */
export function slipWindow(context: RideContext, placed: Placed, sizeDeg: number): SlipWindow {
	const { signals, path, ratios, recordedRatios, gearRatios, response, dips } = context;
	const { grid, logRatio } = signals;
	const { peak, from, to, high, low } = placed;
	const first = peak - WINDOW_BEFORE_S - 1;
	const shiftsKnown = grid.shiftS.length >= LEAST_SHIFTS;
	const window = emptyWindow();
	const fill = (row: Float32Array, value: (t: number) => number) => {
		for (let k = 0; k < READ_S; k++) row[k] = value(first + k);
	};
	fill(window.cadenceRpm, (t) => at(grid.cadenceRpm, t));
	fill(window.speedMps, (t) => at(signals.speedMps, t));
	fill(window.powerW, (t) => at(grid.powerW, t));
	fill(window.recorded, (t) => {
		const code = at(grid.gearCode, t);
		return code >= 0 && shiftsKnown ? recordedRatios[code] - high : NaN;
	});
	fill(window.followed, (t) => {
		const gear = at(path, t);
		return gear >= 0 ? ratios[gear].logRatio - high : NaN;
	});
	fill(window.nearest, (t) => nearestGear(gearRatios, at(logRatio, t)) - high);
	for (const t of grid.shiftS) if (t >= first && t < first + READ_S) window.shift[t - first] = 1;
	window.facts.set([
		high,
		low - high,
		context.noise[peak],
		context.powerNoise[peak],
		context.powerAround[peak],
		context.usualPowerW,
		from - peak,
		to - peak,
		sizeDeg,
		grid.irregular ? 1 : 0,
		context.byTurn ? 1 : 0,
		response.power,
		response.cadence,
		signals.noise,
		placed.carefulDeg,
		placed.generousDeg,
		dips.cadence,
		dips.ratio,
		shiftsKnown ? 1 : 0
	]);
	return window;
}

const ROWS = 7;
export const WINDOW_NUMBERS = ROWS * READ_S + WINDOW_FACTS.length;

/** A window over a list of WINDOW_NUMBERS; a new one of zeros when none is given. */
export function emptyWindow(flat: Float32Array = new Float32Array(WINDOW_NUMBERS)): SlipWindow {
	const row = (i: number) => flat.subarray(i * READ_S, (i + 1) * READ_S);
	return {
		flat,
		cadenceRpm: row(0),
		speedMps: row(1),
		powerW: row(2),
		recorded: row(3),
		followed: row(4),
		nearest: row(5),
		shift: row(6),
		facts: flat.subarray(ROWS * READ_S)
	};
}

function nearestGear(gearRatios: Float64Array, ratio: number): number {
	let nearest = NaN;
	for (const gear of gearRatios) {
		if (!(Math.abs(nearest - ratio) <= Math.abs(gear - ratio)) && ratio === ratio) nearest = gear;
	}
	return nearest;
}
