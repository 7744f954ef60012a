import type { InfluencePoint } from './isotonicRegression';

/** Intercept and slope of highest likelihood, and the information about them: its curvature there. */
export interface LogisticSummit {
	readonly a: number;
	readonly b: number;
	readonly aa: number;
	readonly ab: number;
	readonly bb: number;
}

/**
 * The summit of the likelihood of an S-curve by Newton's steps.
 *
 * @param points trials in which neither all nor none had an event, and whose x does not part the two; x best
 *   between -1 and 1
 * @returns coefficients and information; after 200 steps what stands then
 * @example logisticSummit([{ x: 0, events: 3, exposure: 10 }, { x: 1, events: 8, exposure: 10 }]).a // -0.847
 * Source: McCullagh and Nelder 1989, Generalized Linear Models, 2nd ed., section 4.4.
 */
export function logisticSummit(points: readonly InfluencePoint[]): LogisticSummit {
	let [a, b] = [0, 0];
	for (let step = 0; ; step++) {
		let [ga, gb, aa, ab, bb] = [0, 0, 0, 0, 0];
		for (const { x, events, exposure } of points) {
			const chance = 1 / (1 + Math.exp(-(a + b * x)));
			const weight = exposure * chance * (1 - chance);
			ga += events - exposure * chance;
			gb += (events - exposure * chance) * x;
			aa += weight;
			ab += weight * x;
			bb += weight * x * x;
		}
		const determinant = aa * bb - ab * ab;
		const da = (bb * ga - ab * gb) / determinant;
		const db = (aa * gb - ab * ga) / determinant;
		// far from the summit a full step can overshoot: at most 4 log odds at once
		const shorten = Math.min(1, 4 / Math.max(Math.abs(da), Math.abs(db), 1e-300));
		if (Math.max(Math.abs(da), Math.abs(db)) < 1e-11 || step === 200) return { a, b, aa, ab, bb };
		a += shorten * da;
		b += shorten * db;
	}
}
