/**
 * Features of many candidates as one array a feature, which is how `treeSums` reads them. A row is copied in, so that the
 * list that it was gathered in does not outlive it: a rough ride has thousands.
 */
export class FeatureColumns {
	/** rows put in so far */
	rows = 0;
	readonly columns: readonly Float64Array[];

	/**
	 * @param features how many a row has
	 * @param most how many rows there may be
	 */
	constructor(features: number, most: number) {
		const values = new Float64Array(features * most);
		this.columns = Array.from({ length: features }, (_, f) => values.subarray(f * most, (f + 1) * most));
	}

	/** Puts a row behind the others. */
	add(row: ArrayLike<number>): void {
		const { columns, rows } = this;
		for (let f = 0; f < columns.length; f++) columns[f][rows] = row[f];
		this.rows++;
	}

	/** Some of the rows, by their numbers. */
	some(rows: readonly number[]): FeatureColumns {
		const out = new FeatureColumns(this.columns.length, rows.length);
		this.columns.forEach((column, f) => {
			const into = out.columns[f];
			for (let i = 0; i < rows.length; i++) into[i] = column[rows[i]];
		});
		out.rows = rows.length;
		return out;
	}

	/** A row as it was put in. */
	row(index: number): number[] {
		return this.columns.map((column) => column[index]);
	}
}
