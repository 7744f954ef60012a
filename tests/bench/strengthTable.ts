export interface StrengthCount {
	readonly strength: number;
	readonly slip: boolean;
}

const EDGES = [0, 0.25, 0.5, 0.75, 0.9, 1.0001];

/** Rows of a reliability table: in each band of strength, how many reported events were slips. */
export function strengthTable(counts: readonly StrengthCount[]): string[] {
	const rows = ['| strength | reported | of them slips |', '|---|---|---|'];
	for (let i = 0; i + 1 < EDGES.length; i++) {
		const band = counts.filter(({ strength }) => strength >= EDGES[i] && strength < EDGES[i + 1]);
		const slips = band.filter(({ slip }) => slip).length;
		const share = band.length > 0 ? `${slips} = ${((100 * slips) / band.length).toFixed(0)} %` : '';
		rows.push(`| ${EDGES[i]} to ${Math.min(1, EDGES[i + 1])} | ${band.length} | ${share} |`);
	}
	return rows;
}
