/** Spacers of one thickness. */
export interface SpacerCount {
	readonly thicknessMm: number;
	readonly count: number;
}

export interface SpacerChoice {
	/** the thickest first; empty when no spacer is needed */
	readonly spacers: readonly SpacerCount[];
	readonly totalMm: number;
	/** total minus what was needed; within the tolerance */
	readonly differenceMm: number;
}

/** lengths are compared in whole micrometres */
const PER_MM = 1000;

/**
 * The stocked spacers that make up a missing width: the smallest number of them that comes within the
 * tolerance, and of those the one that comes closest.
 *
 * @param neededMm the width that is missing, up to 100 mm; negative = the stack is too wide already
 * @param toleranceMm how far off the sum may be, >= 0 mm
 * @param stock thicknesses in millimetres with how many there are
 * @returns null when the stock makes no such width, or when the stack is too wide for any spacer
 * @throws RangeError for a negative tolerance, or more than 100 mm
 * @example chooseSpacers(1.5, 0.05, [{ thicknessMm: 1, count: 2 }, { thicknessMm: 0.5, count: 2 }])
 *   // 1 x 1 mm and 1 x 0.5 mm
 * Source: subset sum by dynamic programming, no source; checked against trying all combinations.
 */
export function chooseSpacers(
	neededMm: number,
	toleranceMm: number,
	stock: readonly SpacerCount[]
): SpacerChoice | null {
	if (!(toleranceMm >= 0)) throw new RangeError(`toleranceMm: ${toleranceMm}`);
	if (!(neededMm <= 100)) throw new RangeError(`neededMm: ${neededMm}`);
	const needed = neededMm * PER_MM;
	const tolerance = toleranceMm * PER_MM + 1e-6;
	if (needed + tolerance < 0) return null;
	const bundles = stock.flatMap((spacers) => bundlesOf(spacers, needed + tolerance));
	const reached = fewestFor(bundles, Math.floor(needed + tolerance));
	let best: number | null = null;
	for (let sum = Math.max(0, Math.ceil(needed - tolerance)); sum < reached.fewest.length; sum++) {
		if (reached.fewest[sum] === Infinity) continue;
		const fewer = best === null || reached.fewest[sum] < reached.fewest[best];
		const asFew = best !== null && reached.fewest[sum] === reached.fewest[best];
		if (fewer || (asFew && Math.abs(sum - needed) < Math.abs(best! - needed))) best = sum;
	}
	return best === null ? null : choiceOf(best, neededMm, bundles, reached.taken);
}

interface Bundle {
	readonly thickness: number;
	readonly count: number;
}

/** A count as bundles of 1, 2, 4 ... so that taking some of them makes every number up to it. */
function bundlesOf({ thicknessMm, count }: SpacerCount, most: number): Bundle[] {
	const thickness = Math.round(thicknessMm * PER_MM);
	if (thickness <= 0) return [];
	let left = Math.min(Math.floor(count), Math.floor(most / thickness));
	const bundles: Bundle[] = [];
	for (let size = 1; left > 0; size *= 2) {
		bundles.push({ thickness, count: Math.min(size, left) });
		left -= Math.min(size, left);
	}
	return bundles;
}

/** The smallest number of spacers for every sum, and for each bundle the sums at which it was taken. */
function fewestFor(bundles: readonly Bundle[], most: number): { fewest: Float64Array; taken: Uint8Array[] } {
	const fewest = new Float64Array(most + 1).fill(Infinity);
	fewest[0] = 0;
	const taken = bundles.map(({ thickness, count }) => {
		const takenAt = new Uint8Array(most + 1);
		const width = thickness * count;
		for (let sum = most; sum >= width; sum--) {
			if (fewest[sum - width] + count >= fewest[sum]) continue;
			fewest[sum] = fewest[sum - width] + count;
			takenAt[sum] = 1;
		}
		return takenAt;
	});
	return { fewest, taken };
}

function choiceOf(
	sum: number,
	neededMm: number,
	bundles: readonly Bundle[],
	taken: readonly Uint8Array[]
): SpacerChoice {
	const counts = new Map<number, number>();
	let left = sum;
	for (let index = bundles.length - 1; index >= 0; index--) {
		if (!taken[index][left]) continue;
		const { thickness, count } = bundles[index];
		counts.set(thickness, (counts.get(thickness) ?? 0) + count);
		left -= thickness * count;
	}
	const spacers = [...counts]
		.sort(([a], [b]) => b - a)
		.map(([thickness, count]) => ({ thicknessMm: thickness / PER_MM, count }));
	return { spacers, totalMm: sum / PER_MM, differenceMm: sum / PER_MM - neededMm };
}
