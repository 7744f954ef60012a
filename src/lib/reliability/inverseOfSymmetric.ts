/**
 * The inverse of a symmetric matrix that has no negative direction, such as a matrix of covariances.
 *
 * @param matrix square, symmetric, rows of equal length
 * @returns the inverse; null when the matrix has none (rows depend on each other)
 * @example inverseOfSymmetric([[2, 0], [0, 4]]) // [[0.5, 0], [0, 0.25]]
 * Source: Gauss and Jordan's elimination with pivots on the diagonal, any textbook of numerical analysis.
 */
export function inverseOfSymmetric(matrix: readonly (readonly number[])[]): number[][] | null {
	const n = matrix.length;
	const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
	for (let k = 0; k < n; k++) {
		const pivot = rows[k][k];
		// what is left of the diagonal once the rows above are taken out: nothing means dependence
		if (!(pivot > 1e-10 * matrix[k][k])) return null;
		rows[k] = rows[k].map((value) => value / pivot);
		for (let i = 0; i < n; i++) {
			const factor = rows[i][k];
			if (i === k || factor === 0) continue;
			rows[i] = rows[i].map((value, j) => value - factor * rows[k][j]);
		}
	}
	return rows.map((row) => row.slice(n));
}
