import type { ExposureAmount } from './exposure';

/** Sums of one exposure, one behind the other: see `amounts` for their order. */
const AMOUNTS = 8;

/** What one second adds. */
export interface ExposureSecond {
	/** way to the next second, m */
	metres: number;
	/** 1 under drive, else 0 */
	driven: number;
	/** 1 on an observed stretch, else 0 */
	seen: number;
	crankTurns: number;
	/** 1 where pressing begins, else 0 */
	begins: number;
}

/**
 * Sums of exposure by number of a cell, in one flat array, because every second of a ride is added twice.
 */
export class ExposureSums {
	private readonly sums: Float64Array;
	private readonly met: Uint8Array;
	/** numbers of the cells that got anything, in the order in which they got it */
	readonly filled: number[] = [];

	/** @param cells cells are numbered from 0 */
	constructor(cells: number) {
		this.sums = new Float64Array(cells * AMOUNTS);
		this.met = new Uint8Array(cells);
	}

	/** Adds a second to a cell. */
	add(cell: number, { metres, driven, seen, crankTurns, begins }: ExposureSecond): void {
		if (!this.met[cell]) {
			this.met[cell] = 1;
			this.filled.push(cell);
		}
		const { sums } = this;
		const from = cell * AMOUNTS;
		sums[from + 2] += seen * metres;
		sums[from + 3] += seen;
		if (!driven) return;
		sums[from] += metres;
		sums[from + 1]++;
		sums[from + 4] += crankTurns;
		sums[from + 5] += seen * crankTurns;
		sums[from + 6] += begins;
		sums[from + 7] += seen * begins;
	}

	/** The sums of a cell by name. */
	amounts(cell: number): ExposureAmount {
		const from = cell * AMOUNTS;
		return {
			drivenM: this.sums[from],
			drivenS: this.sums[from + 1],
			observedM: this.sums[from + 2],
			observedS: this.sums[from + 3],
			drivenTurns: this.sums[from + 4],
			observedTurns: this.sums[from + 5],
			pickUps: this.sums[from + 6],
			observedPickUps: this.sums[from + 7]
		};
	}
}
