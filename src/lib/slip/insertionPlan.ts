import { INSERTION_PLACES, type InsertionPlace, type PossibleOnset } from './insertionPlaces';
import type { Chance } from './seededChance';

/** Sizes that are put in, crank degrees; the reference size twice as often as the others. */
export const INSERTED_SIZES_DEG = [30, 45, 60, 90, 90, 120, 180] as const;
/** The same for tables of a logger, which show far smaller ones. */
export const LOGGER_SIZES_DEG = [8, 15, 30, 60, 90, 90, 120] as const;

export interface PlannedSlip extends PossibleOnset {
	readonly place: InsertionPlace;
	readonly crankDeg: number;
}

/** seconds between slips of one pass: noise is learned over 30 s to either side */
const APART_S = 60;
/** a pass changes at most so little of the riding that what is learned of it stays */
const PRESSING_S_EACH = 200;
const MOST_PUT = 120;
const MOST_PASSES = 8;
const ATTEMPTS_EACH = 25;
const BURST_SIZE = 3;

/** share of the slips by place; a burst counts as one */
const SHARES: Record<InsertionPlace, number> = {
	steady: 0.42,
	'near a shift': 0.27,
	start: 0.23,
	burst: 0.08
};

/**
 * Plans where slips are put: in several passes, so that they lie well apart; by place in fixed shares, within a
 * place equally often at each torque at which the ride has it. Hard torque is rare in a ride and is what one
 * wants to know about: so found shares of all places together are not those of a mean kilometre.
 *
 * @param places possible onsets by place
 * @param chance stream of random numbers
 * @param sizesDeg crank degrees, in turn
 * @returns passes, each in order of time; none where nothing was pressed
 */
export function insertionPlan(
	places: Record<InsertionPlace, readonly PossibleOnset[]>,
	chance: Chance,
	sizesDeg: readonly number[] = INSERTED_SIZES_DEG
): PlannedSlip[][] {
	const pressing = places.steady.length + places['near a shift'].length + places.start.length;
	const each = Math.floor(pressing / PRESSING_S_EACH);
	const used = INSERTION_PLACES.filter((place) => places[place].length > 0);
	if (each < 1 || used.length === 0) return [];
	const passes: PlannedSlip[][] = [];
	let put = 0;
	let turn = Math.floor(chance.next() * sizesDeg.length);
	const byTorque = new Map(used.map((place) => [place, groupByTorque(places[place])]));
	while (passes.length < MOST_PASSES && put < MOST_PUT) {
		const pass: PlannedSlip[] = [];
		const wanted = Math.min(each, MOST_PUT - put);
		for (let attempt = 0; attempt < wanted * ATTEMPTS_EACH && pass.length < wanted; attempt++) {
			const place = drawPlace(used, chance);
			const groups = byTorque.get(place)!;
			const onset = pick(pick(groups, chance), chance);
			const crankDeg = sizesDeg[turn % sizesDeg.length];
			const slips = place === 'burst' ? burst(onset, crankDeg, chance) : [{ ...onset, place, crankDeg }];
			if (tooNear(pass, slips)) continue;
			pass.push(...slips);
			turn++;
		}
		put += pass.length;
		passes.push(pass.sort((a, b) => a.second - b.second));
	}
	return passes;
}

function groupByTorque(onsets: readonly PossibleOnset[]): PossibleOnset[][] {
	const groups = new Map<number | null, PossibleOnset[]>();
	for (const onset of onsets) {
		const group = groups.get(onset.torqueFromNm);
		if (group) group.push(onset);
		else groups.set(onset.torqueFromNm, [onset]);
	}
	return [...groups.values()];
}

function drawPlace(used: readonly InsertionPlace[], chance: Chance): InsertionPlace {
	let left = chance.next() * used.reduce((sum, place) => sum + SHARES[place], 0);
	for (const place of used) if ((left -= SHARES[place]) < 0) return place;
	return used[used.length - 1];
}

/** Slips of one size a few seconds apart; the torque is that before the first. */
function burst(onset: PossibleOnset, crankDeg: number, chance: Chance): PlannedSlip[] {
	const gapS = 5 + Math.floor(chance.between(0, 4));
	return Array.from({ length: BURST_SIZE }, (_, k) => ({
		...onset,
		second: onset.second + k * gapS,
		place: 'burst',
		crankDeg
	}));
}

function tooNear(pass: readonly PlannedSlip[], slips: readonly PlannedSlip[]): boolean {
	return pass.some((other) => slips.some(({ second }) => Math.abs(other.second - second) < APART_S));
}

function pick<T>(values: readonly T[], chance: Chance): T {
	return values[Math.floor(chance.next() * values.length)];
}
