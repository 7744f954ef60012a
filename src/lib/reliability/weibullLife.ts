import { checkConfidence, checkPositive } from './checks';
import { normalQuantile } from './normalQuantile';
import { rootBetween } from './rootBetween';
import { weibullInformation } from './weibullInformation';

/** One part: the age at which it failed, or up to which it had not failed yet. */
export interface Life {
	readonly age: number;
	readonly failed: boolean;
}

export interface WeibullFit {
	readonly parts: number;
	readonly failures: number;
	/** above 1: it wears out; below 1: early failures */
	readonly shape: number;
	readonly shapeLower: number;
	readonly shapeUpper: number;
	/** age by which 63.2 % have failed */
	readonly scale: number;
	readonly scaleLower: number;
	readonly scaleUpper: number;
	readonly logLikelihood: number;
	/** variances and covariance of the logarithms of scale and of 1 / shape */
	readonly logScaleVariance: number;
	readonly logSpreadVariance: number;
	readonly covariance: number;
	/** true: so few failures give numbers, not knowledge (fewer than five; common practice, no source) */
	readonly fewFailures: boolean;
}

/**
 * The life of parts that fail ONCE (a broken spring, not a slip that comes again), when some have not failed yet:
 * Weibull distribution by maximum likelihood, limits on the logarithm.
 *
 * @param lives ages above 0; the unfailed ones are censored on the right
 * @param confidence two-sided, 0 < confidence < 1
 * @returns the fit; null without a failure, or when all failures share one age and nothing outlived it
 * @throws RangeError for ages that are not above 0 or a confidence outside (0, 1)
 * @example weibullLife(fans, 0.95) // shape 1.058 (0.644 to 1.739), scale 26,297 h from 12 failures of 70
 * Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data, chapter 8; NIST/SEMATECH e-Handbook
 * 8.4.1.3; Nelson 1982 (generator fans) in tests/published.
 */
export function weibullLife(lives: readonly Life[], confidence: number): WeibullFit | null {
	checkConfidence('confidence', confidence);
	for (const { age } of lives) checkPositive('age', age);
	const failed = lives.filter((life) => life.failed);
	const r = failed.length;
	if (r === 0) return null;
	// ages are divided by the largest, so that powers stay between 0 and 1
	const unit = lives.reduce((largest, life) => Math.max(largest, life.age), 0);
	const logs = lives.map((life) => Math.log(life.age / unit));
	const meanLog = failed.reduce((sum, life) => sum + Math.log(life.age / unit), 0) / r;
	const slope = (logShape: number) => {
		const shape = Math.exp(logShape);
		let [powers, weighted] = [0, 0];
		for (const log of logs) {
			const power = Math.exp(shape * log);
			powers += power;
			weighted += power * log;
		}
		return weighted / powers - 1 / shape - meanLog;
	};
	const logShape = rootBetween(slope, Math.log(0.01), Math.log(500));
	if (Number.isNaN(logShape)) return null;
	const shape = Math.exp(logShape);
	const logScale = Math.log(logs.reduce((sum, log) => sum + Math.exp(shape * log), 0) / r) / shape;
	const { logLikelihood, ...errors } = weibullInformation(lives, logScale + Math.log(unit), 1 / shape);
	const z = normalQuantile(1 - (1 - confidence) / 2);
	const ofShape = Math.exp(z * Math.sqrt(errors.logSpreadVariance));
	const ofScale = Math.exp(z * Math.sqrt(errors.logScaleVariance));
	const scale = unit * Math.exp(logScale);
	return {
		parts: lives.length,
		failures: r,
		shape,
		shapeLower: shape / ofShape,
		shapeUpper: shape * ofShape,
		scale,
		scaleLower: scale / ofScale,
		scaleUpper: scale * ofScale,
		logLikelihood,
		...errors,
		fewFailures: r < 5
	};
}
