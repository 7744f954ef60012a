import type { Random } from '../../../sample-rides/generator/random';

/** Values are looked at in so many steps. */
export const BINS = 64;

/** Quantile cuts from a sample of the values. */
export function cutPoints(rows: readonly Float64Array[], f: number, chance: Random): Float64Array {
	const sample: number[] = [];
	const share = Math.min(1, 40000 / rows.length);
	for (const row of rows) if (!Number.isNaN(row[f]) && chance.next() < share) sample.push(row[f]);
	sample.sort((a, b) => a - b);
	const cuts: number[] = [];
	for (let k = 1; k < BINS - 1; k++) {
		const cut = Number(sample[Math.floor((k * sample.length) / (BINS - 1))]?.toPrecision(4));
		if (cut > (cuts.at(-1) ?? -Infinity)) cuts.push(cut);
	}
	return Float64Array.from(cuts);
}

/** 0 = missing; else 1 + number of cuts below the value: bin <= b means value <= cuts[b - 1]. */
export function binOf(value: number, cuts: Float64Array): number {
	if (Number.isNaN(value)) return 0;
	let low = 0;
	let high = cuts.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (cuts[middle] < value) low = middle + 1;
		else high = middle;
	}
	return 1 + low;
}
