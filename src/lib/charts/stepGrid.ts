/**
 * Grid lines for the gained angle: the clutch's own steps where they are known and far enough apart to
 * be told, else every second, fifth, tenth... of them; without a known step, round degrees.
 *
 * @param domain hub degrees shown [low, high]
 * @param stepHubDeg hub degrees of one engagement step, or null
 * @param most how many lines fit, >= 2
 * @returns values of the lines in hub degrees, and how many steps lie between two of them (null: degrees)
 * @example stepGrid([-30, 90], 10, 6) // { values: [-20, 0, 20, 40, 60, 80], every: 2 }
 */
export function stepGrid(
	domain: readonly [number, number],
	stepHubDeg: number | null,
	most: number
): { values: number[]; every: number | null } {
	const unit = stepHubDeg && stepHubDeg > 0 ? stepHubDeg : 1;
	const multiples = stepHubDeg
		? [1, 2, 5, 10, 20, 50, 100, 200, 500]
		: [10, 15, 30, 45, 90, 180, 360, 720, 1440];
	const every =
		multiples.find((multiple) => (domain[1] - domain[0]) / (multiple * unit) <= most) ??
		multiples[multiples.length - 1];
	const gap = every * unit;
	const values: number[] = [];
	for (let k = Math.ceil(domain[0] / gap); k * gap <= domain[1]; k++) values.push(k * gap);
	return { values, every: stepHubDeg && stepHubDeg > 0 ? every : null };
}
