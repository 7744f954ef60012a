import { dispersion } from '$lib/reliability/dispersion';
import { isotonicRegression } from '$lib/reliability/isotonicRegression';
import { logisticCurve } from '$lib/reliability/logisticCurve';
import { logisticRegression, type LogisticFit } from '$lib/reliability/logisticRegression';
import { normalQuantile } from '$lib/reliability/normalQuantile';
import { HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';
import { CONFIDENCE } from '../rates/countView';
import type { Counting } from './binnedRates';
import type { BuildEvidence } from './buildEvidence';
import { unitsOf } from './buildRates';
import { countedSlips } from './countedSlips';
import { LEAST_REFERENCE_M } from './expectedSlips';
import { torqueOfBin } from './torqueOfBin';

/** What one torque bin tells: each observed crank turn under drive has two power strokes. */
export interface TorquePoint {
	readonly fromNm: number;
	/** null = open upwards */
	readonly toNm: number | null;
	readonly slips: number;
	/** observed, under drive */
	readonly strokes: number;
	/** slips per 10,000 strokes, smoothed as little as is needed for it never to fall with torque; null without strokes */
	readonly neverFalling: number | null;
}

/** The smooth curve at one torque, slips per 10,000 power strokes. */
export interface TorqueCurvePoint {
	readonly torqueNm: number;
	readonly value: number;
	readonly lower: number;
	readonly upper: number;
}

export interface TorqueCurve {
	readonly points: readonly TorquePoint[];
	/** slips whose torque is not known: they are in no point and in no curve */
	readonly withoutTorque: number;
	readonly confidence: number;
	/**
	 * `fit`: drawn; `too few`: fewer slips than a curve can be laid through; `separated`: one torque parts the
	 * slips from all strokes without one, so no curve is steep enough; `one torque`: only one bin was ridden, or only one for 2 km or more
	 */
	readonly kind: 'fit' | 'too few' | 'separated' | 'one torque';
	/** between the bins that were observed for 2 km or more, and no farther; empty unless `fit` */
	readonly smooth: readonly TorqueCurvePoint[];
	/** times the chance of a slip for 10 Nm more, other circumstances not held; null unless `fit` */
	readonly perTenNm: { readonly value: number; readonly lower: number; readonly upper: number } | null;
}

/** slips in the unit that pages show */
export const STROKES_UNIT = 10_000;
/** fewer slips than this and a curve with two figures of its own pretends too much (common practice, no source) */
const LEAST_SLIPS = 5;
const STEPS = 40;

/**
 * How the chance of a slip in one power stroke goes with hub torque: bins as they are, the curve that never falls
 * (isotonic), and an S-curve (logistic) with limits that whole rides' scatter widens. Two shapes on purpose: where
 * they part, the smooth one says more than the data.
 *
 * @returns points of every torque bin, those without strokes among them
 */
export function torqueCurve(evidence: BuildEvidence, counting: Counting): TorqueCurve {
	const { bins, withoutTorque } = tally(evidence, counting);
	const trials = bins.map(({ atNm, slips, strokes }) => ({ x: atNm, events: slips, exposure: strokes }));
	const rising = new Map(isotonicRegression(trials).map(({ x, fitted }) => [x, fitted * STROKES_UNIT]));
	const told = {
		points: bins.map(({ atNm, fromNm, toNm, slips, strokes }) => ({
			fromNm,
			toNm,
			slips,
			strokes,
			neverFalling: rising.get(atNm) ?? null
		})),
		withoutTorque,
		confidence: CONFIDENCE
	};
	const none = { ...told, smooth: [], perTenNm: null };
	if (bins.reduce((sum, { slips }) => sum + slips, 0) < LEAST_SLIPS) return { ...none, kind: 'too few' };
	const fit = logisticRegression(trials);
	if (fit.kind !== 'fit') return { ...none, kind: fit.kind === 'oneValue' ? 'one torque' : 'separated' };
	const widened = widen(fit, dispersion(unitsOf(evidence.rides, counting)));
	const ridden = bins.filter(({ observedM }) => observedM >= LEAST_REFERENCE_M).map(({ atNm }) => atNm);
	if (ridden.length < 2) return { ...none, kind: 'one torque' };
	return { ...told, kind: 'fit', smooth: smoothOf(widened, ridden), perTenNm: perTenNm(widened) };
}

function tally({ rides }: BuildEvidence, { unit, unreviewed }: Counting) {
	const slips = rides.flatMap(({ events }) => countedSlips(events, unit, unreviewed));
	const ridden = HUB_TORQUE_EDGES_NM.map(() => ({ turns: 0, metres: 0 }));
	for (const { torqueBin, observedTurns, observedM } of rides.flatMap(({ cells }) => cells))
		if (torqueBin >= 0) {
			ridden[torqueBin].turns += observedTurns;
			ridden[torqueBin].metres += observedM;
		}
	return {
		bins: ridden.map(({ turns, metres }, bin) => {
			const within = slips.filter(({ torqueBin }) => torqueBin === bin).length;
			return {
				fromNm: HUB_TORQUE_EDGES_NM[bin],
				toNm: HUB_TORQUE_EDGES_NM[bin + 1] ?? null,
				atNm: torqueOfBin(bin),
				slips: within,
				// a slip happened in some stroke, also where rounding leaves none
				strokes: Math.max(within, Math.round(2 * turns)),
				observedM: metres
			};
		}),
		withoutTorque: slips.filter(({ torqueBin }) => torqueBin < 0).length
	};
}

/** slips of one ride go together: standard errors grow by the root of their scatter (quasi-likelihood) */
function widen(fit: LogisticFit, scatter: number): LogisticFit {
	const times = Number.isNaN(scatter) ? 1 : Math.max(1, scatter);
	return {
		...fit,
		interceptVariance: fit.interceptVariance * times,
		slopeVariance: fit.slopeVariance * times,
		covariance: fit.covariance * times
	};
}

function smoothOf(fit: LogisticFit, riddenNm: readonly number[]): TorqueCurvePoint[] {
	const [from, to] = [Math.min(...riddenNm), Math.max(...riddenNm)];
	return Array.from({ length: STEPS + 1 }, (_, step) => {
		const torqueNm = from + ((to - from) * step) / STEPS;
		const { chance, lower, upper } = logisticCurve(fit, torqueNm, CONFIDENCE);
		return {
			torqueNm,
			value: chance * STROKES_UNIT,
			lower: lower * STROKES_UNIT,
			upper: upper * STROKES_UNIT
		};
	});
}

function perTenNm({ slope, slopeVariance }: LogisticFit) {
	const reach = normalQuantile(1 - (1 - CONFIDENCE) / 2) * Math.sqrt(slopeVariance);
	return {
		value: Math.exp(10 * slope),
		lower: Math.exp(10 * (slope - reach)),
		upper: Math.exp(10 * (slope + reach))
	};
}
