import type { Life } from './weibullLife';

/** Log likelihood at its summit, and variances and covariance of log scale and log spread from its curvature. */
export interface WeibullInformation {
	readonly logLikelihood: number;
	readonly logScaleVariance: number;
	readonly logSpreadVariance: number;
	readonly covariance: number;
}

/**
 * What the likelihood of a Weibull life tells about scale and spread (1 / shape), at its summit.
 *
 * @param lives ages above 0
 * @param logScale logarithm of the scale of highest likelihood
 * @param spread 1 / shape of highest likelihood
 * @returns likelihood and covariances
 * @example weibullInformation(lives, Math.log(fit.scale), 1 / fit.shape).logLikelihood
 * Source: second derivatives of the log likelihood, Meeker and Escobar 1998, Statistical Methods for Reliability
 * Data, chapter 8.
 */
export function weibullInformation(
	lives: readonly Life[],
	logScale: number,
	spread: number
): WeibullInformation {
	let [scaleScale, scaleSpread, spreadSpread, logLikelihood] = [0, 0, 0, 0];
	for (const { age, failed } of lives) {
		const z = (Math.log(age) - logScale) / spread;
		const hazard = Math.exp(z);
		const event = failed ? 1 : 0;
		scaleScale += hazard / spread ** 2;
		scaleSpread += (hazard * z - (event - hazard)) / spread;
		spreadSpread += hazard * z * z - (event - hazard) * z;
		logLikelihood += event * (z - Math.log(spread) - Math.log(age)) - hazard;
	}
	const determinant = scaleScale * spreadSpread - scaleSpread ** 2;
	return {
		logLikelihood,
		logScaleVariance: spreadSpread / determinant,
		logSpreadVariance: scaleScale / determinant,
		covariance: -scaleSpread / determinant
	};
}
