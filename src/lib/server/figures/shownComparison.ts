import type { BuildAgainstBuild, BuildTold } from '../evidence/buildAgainstBuild';
import type { AgeLine, BuildRow, DrawnLine } from '../views';

/** so many rows of each build has the table of steps, and all lines together that of slips: nobody reads more */
const LISTED_STEPS = 60;
const LISTED_SLIPS = 100;
const FEWEST_OF_A_LINE = 5;
/** more slips than this are drawn without marks (SlipsOverDistance) */
const MOST_MARKED = 400;
/** the widest drawing has this many pixels: more corners than that are not seen */
const MOST_CORNERS = 1400;

/** A line with those of its slips in full that the page lists or marks. */
export interface ShownLine extends DrawnLine {
	/** where further slips lie, metres, in order: drawn without a mark, in no table of the page */
	readonly furtherM: readonly number[];
}

type Step = BuildTold['life']['curve'][number];

/**
 * The comparison as its page shows it. What stands in words and tables is as it was computed; what is drawn alone is
 * rounded to less than what a pixel is: places to a metre (stretches to a tenth), means and limits to four digits.
 */
export function shownComparison(
	{ builds, lines }: { readonly builds: readonly BuildRow[]; readonly lines: readonly AgeLine[] },
	told: BuildAgainstBuild
) {
	const listed = {
		steps: LISTED_STEPS,
		slipsOfLine: Math.max(FEWEST_OF_A_LINE, Math.floor(LISTED_SLIPS / Math.max(1, lines.length)))
	};
	return {
		/** rows of the page's tables; all of them are in the tables to take away */
		listed,
		comparison: { builds, lines: shownLines(lines, listed.slipsOfLine) },
		told: {
			...told,
			builds: told.builds.map((build) => ({
				...build,
				life: { ...build.life, curve: shownCurve(build.life.curve, build.endM) }
			}))
		}
	};
}

function shownLines(lines: readonly AgeLine[], listed: number): ShownLine[] {
	const all = lines.reduce((sum, { slips }) => sum + slips.length, 0);
	const most = all <= MOST_MARKED ? all : listed;
	return lines.map(({ rides: _, ...line }) => ({
		...line,
		observed: line.observed.map(({ fromM, toM }) => ({ fromM: toTenth(fromM), toM: toTenth(toM) })),
		slips: line.slips.slice(0, most),
		furtherM: line.slips.slice(most).map(({ atM }) => Math.round(atM))
	}));
}

/**
 * The steps of a curve: those that the page lists and the last as they are, the others rounded, and of very many only
 * so many as can be drawn. A corner is drawn at most 1/1400 of the curve's length beside its place; the highest limit of
 * each such stretch stays.
 */
export function shownCurve(steps: readonly Step[], endM: number): Step[] {
	const listed = steps.slice(0, LISTED_STEPS);
	const rest = steps.slice(LISTED_STEPS, -1);
	const drawn = rest.length > MOST_CORNERS ? thinned(rest, endM / MOST_CORNERS) : rest;
	return [...listed, ...drawn.map(roundedStep), ...steps.slice(LISTED_STEPS).slice(-1)];
}

/** of each stretch the last step, and the one with the highest limit before it */
function thinned(steps: readonly Step[], stretchM: number): Step[] {
	const kept: Step[] = [];
	for (let from = 0; from < steps.length;) {
		const stretch = Math.floor(steps[from].atM / stretchM);
		let until = from;
		let highest = from;
		for (; until < steps.length && Math.floor(steps[until].atM / stretchM) === stretch; until++)
			if (steps[until].upper > steps[highest].upper) highest = until;
		if (highest < until - 1) kept.push(steps[highest]);
		kept.push(steps[until - 1]);
		from = until;
	}
	return kept;
}

function roundedStep({ atM, value, lower, upper }: Step): Step {
	return {
		atM: Math.round(atM),
		value: fourDigits(value),
		lower: fourDigits(lower),
		upper: fourDigits(upper)
	};
}

function fourDigits(value: number): number {
	return Number(value.toPrecision(4));
}

function toTenth(metres: number): number {
	return Math.round(metres * 10) / 10;
}
