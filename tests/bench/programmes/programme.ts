import { randomNumbers, type RandomNumbers } from '$lib/reliability/randomNumbers';
import type { UnitCount } from '$lib/reliability/unitCounts';

/** How events come in a simulated programme. */
export interface Conditions {
	/** single events; bursts of 2.5 on average; good and bad outings (rates spread with a coefficient of 1) */
	readonly clustering: 'single' | 'bursts' | 'outings';
	/** coefficient of variation of the rate between hubs; 0: all alike */
	readonly hubSpread: number;
	/** outings of the new build, on three hubs */
	readonly outings: number;
	/** events of the new build that are expected on average */
	readonly expectedEvents: number;
}

/** One outing with its exposure by load band. */
export interface Outing extends UnitCount {
	readonly bands: readonly UnitCount[];
}

export interface Side {
	readonly outings: readonly Outing[];
	/** true events per exposure of these hubs, by band and in all */
	readonly bandRates: readonly number[];
	readonly rate: number;
}

/** events per exposure rise with load: relative rates of four bands */
const BAND_RATES = [0.2, 0.6, 1.5, 4];
const HUBS = 3;
const BURST = 2.5;
/** the reference: 30 outings, 40 events on average */
const REFERENCE = { outings: 30, expectedEvents: 40 };

/** A programme: the reference, then the new build on other loads. The same seed gives the same programme. */
export function simulateProgramme(seed: number, conditions: Conditions): { reference: Side; fresh: Side } {
	const draw = randomNumbers(seed);
	const reference = simulateSide(draw, { ...conditions, ...REFERENCE }, [0.4, 0.3, 0.2, 0.1]);
	const fresh = simulateSide(draw, conditions, [0.5, 0.3, 0.15, 0.05]);
	return { reference, fresh };
}

function simulateSide(draw: RandomNumbers, conditions: Conditions, mix: readonly number[]): Side {
	const { clustering, hubSpread, outings, expectedEvents } = conditions;
	const shape = hubSpread > 0 ? 1 / hubSpread ** 2 : Infinity;
	const hubs = Array.from({ length: HUBS }, () => (shape === Infinity ? 1 : gamma(draw, shape) / shape));
	const meanExposure = 60;
	const level =
		expectedEvents / outings / meanExposure / mix.reduce((sum, m, b) => sum + m * BAND_RATES[b], 0);
	const perEvent = clustering === 'bursts' ? BURST : 1;
	const exposures = mix.map(() => 0);
	const means = mix.map(() => 0);
	const made = Array.from({ length: outings }, (_, i) => {
		const length = meanExposure * (0.5 + draw.next());
		const weights = mix.map((m) => m * (0.5 + draw.next()));
		const whole = weights.reduce((a, b) => a + b);
		const day = clustering === 'outings' ? gamma(draw, 1) : 1;
		const bands = weights.map((weight, band) => {
			const exposure = (length * weight) / whole;
			const mean = level * BAND_RATES[band] * hubs[i % HUBS] * exposure;
			exposures[band] += exposure;
			means[band] += mean;
			return { exposure, count: events(draw, (mean * day) / perEvent, perEvent) };
		});
		return { bands, exposure: length, count: bands.reduce((sum, band) => sum + band.count, 0) };
	});
	const sum = (of: readonly number[]) => of.reduce((a, b) => a + b, 0);
	return {
		outings: made,
		bandRates: means.map((mean, band) => mean / exposures[band]),
		rate: sum(means) / sum(exposures)
	};
}

/** bursts of a geometric size with this mean; 1: single events */
function events(draw: RandomNumbers, meanBursts: number, size: number): number {
	let count = 0;
	for (let bursts = draw.poisson(meanBursts); bursts > 0; bursts--) {
		count++;
		while (size > 1 && draw.next() < 1 - 1 / size) count++;
	}
	return count;
}

/** gamma variable of this shape and scale 1 (Marsaglia and Tsang 2000, ACM Trans. Math. Software 26:363) */
function gamma(draw: RandomNumbers, shape: number): number {
	const d = shape - 1 / 3;
	const c = 1 / Math.sqrt(9 * d);
	for (;;) {
		const x = draw.normal();
		const v = (1 + c * x) ** 3;
		if (v > 0 && Math.log(1 - draw.next()) < (x * x) / 2 + d - d * v + d * Math.log(v)) return d * v;
	}
}
