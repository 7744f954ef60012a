/** A reported event of a ride left out: its log odds, what it was, and how much it weighs. */
export interface Reported {
	readonly logOdds: number;
	readonly slip: boolean;
	readonly weight: number;
}

export const SLIPS_PER_THOUSAND_KM = 20;

/** Few false alarms are left to learn from: the slope is held near 1, where log odds mean what they say. */
const HELD = 8;

/** Logistic regression of "was a slip" on the log odds of the trees, by Newton's method. */
export function calibrateStrength(reported: readonly Reported[]) {
	let intercept = -1;
	let slope = 1;
	for (let turn = 0; turn < 60; turn++) {
		let g0 = -0.05 * intercept;
		let g1 = HELD * (1 - slope);
		let h00 = 0.05;
		let h01 = 0;
		let h11 = HELD;
		for (const { logOdds, slip, weight } of reported) {
			const p = 1 / (1 + Math.exp(-(intercept + slope * logOdds)));
			const off = weight * ((slip ? 1 : 0) - p);
			const curve = weight * p * (1 - p);
			g0 += off;
			g1 += off * logOdds;
			h00 += curve;
			h01 += curve * logOdds;
			h11 += curve * logOdds * logOdds;
		}
		const determinant = h00 * h11 - h01 * h01;
		intercept += 0.5 * ((h11 * g0 - h01 * g1) / determinant);
		slope += 0.5 * ((h00 * g1 - h01 * g0) / determinant);
	}
	return {
		intercept: Number(intercept.toFixed(3)),
		slope: Number(slope.toFixed(3)),
		slipsPerThousandKm: SLIPS_PER_THOUSAND_KM
	};
}
