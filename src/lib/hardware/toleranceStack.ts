/** One link of a chain of lengths; a sum of links is a width, a gap or a depth. */
export interface ChainLink {
	/** 1 adds to the chain, -1 takes from it */
	readonly sign: -1 | 1;
	readonly nominalMm: number;
	/** how much shorter the link may be, >= 0 mm */
	readonly minusMm: number;
	/** how much longer the link may be, >= 0 mm */
	readonly plusMm: number;
}

export interface ToleranceStack {
	readonly nominalMm: number;
	/** every link at its worse limit at once */
	readonly worstCase: { readonly lowestMm: number; readonly highestMm: number };
	/** links that vary each for itself around the middle of their tolerance */
	readonly rootSumSquare: { readonly lowestMm: number; readonly highestMm: number };
}

/**
 * What a chain of toleranced lengths may come to. Worst case adds all tolerances; the root of the sum of
 * their squares holds for nearly all assemblies if each link varies independently around the middle of its
 * tolerance and fills no more than it. A few links from one batch do not: then the worst case is the answer.
 * Unequal limits are first centred: the middle moves by half their difference (common practice, no source).
 *
 * @param links lengths and tolerances in millimetres, in any order
 * @returns all 0 for no links
 * @throws RangeError for a tolerance that is negative or a length that is not a number
 * @example toleranceStack([{ sign: 1, nominalMm: 20, minusMm: 0.3, plusMm: 0.3 },
 *   { sign: -1, nominalMm: 19, minusMm: 0.4, plusMm: 0.4 }])
 *   // nominal 1, worst case 0.3 to 1.7, root sum square 0.5 to 1.5
 * Source: F. Scholz, Tolerance Stack Analysis Methods, research report, December
 * 1995, arithmetic and RSS tolerance stacks.
 */
export function toleranceStack(links: readonly ChainLink[]): ToleranceStack {
	let nominalMm = 0;
	let middleMm = 0;
	let halfWidths = 0;
	let squares = 0;
	for (const { sign, nominalMm: length, minusMm, plusMm } of links) {
		if (!(minusMm >= 0 && plusMm >= 0)) throw new RangeError(`tolerance: -${minusMm} +${plusMm}`);
		if (!Number.isFinite(length + minusMm + plusMm)) throw new RangeError(`length: ${length}`);
		const half = (minusMm + plusMm) / 2;
		nominalMm += sign * length;
		middleMm += sign * (length + (plusMm - minusMm) / 2);
		halfWidths += half;
		squares += half * half;
	}
	const around = (half: number) => ({ lowestMm: middleMm - half, highestMm: middleMm + half });
	return { nominalMm, worstCase: around(halfWidths), rootSumSquare: around(Math.sqrt(squares)) };
}
