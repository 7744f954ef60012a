import type { Placed } from './candidateFeatures';
import { AFTER_SLIP, COASTING, PICKING_UP, RING_CHANGED, SETTLING, SLIP, STATES } from './driveModel';
import { drivePosteriors } from './drivePosteriors';
import { filledUp } from './filledUp';
import { gearsNear } from './explainByGears';
import type { RideContext } from './rideContext';

export const STATE_FEATURES = [
	'log odds of the slip state',
	'deg in the slip state',
	'seconds in the slip state',
	'seconds after slip',
	'settling at peak',
	'seconds of settling near',
	'picking up at peak',
	'seconds of picking up before',
	'coasting after',
	'ring changed at peak',
	'log odds of slip against a change'
];

const AROUND_S = 8;
const ROUNDING_RPM = 0.29;
const LEAST_SD = 0.006;
/** Speed and cadence are told at instants up to this far apart. */
const CLOCKS_APART_S = 0.3;
const LEAST_USUAL_W = 40;

/** What the model of the drive's states makes of the seconds around a candidate. */
export function stateFeatures(context: RideContext, placed: Placed, out: number[]): void {
	const start = Math.max(0, placed.from - AROUND_S);
	const end = Math.min(context.signals.grid.seconds - 1, placed.to + AROUND_S);
	const seconds = end - start + 1;
	const gears = gearsNear(context, placed, start, end);
	const { chance, slipDeg } = drivePosteriors(seconds, secondsShown(context, start), gears);
	const sum = (state: number, from: number, to: number) => {
		let total = 0;
		for (let t = Math.max(start, from); t <= Math.min(end, to); t++)
			total += chance[(t - start) * STATES + state];
		return total;
	};
	let most = 0;
	let deg = 0;
	for (let t = Math.max(start, placed.from - 1); t <= Math.min(end, placed.to + 1); t++) {
		const slip = chance[(t - start) * STATES + SLIP];
		most = Math.max(most, slip);
		deg += slip * slipDeg[t - start];
	}
	const { from, to, peak } = placed;
	out.push(
		Math.log((most + 1e-13) / (1 - most + 1e-13)),
		deg / Math.max(1e-12, most),
		sum(SLIP, from - 1, to + 1),
		sum(AFTER_SLIP, from, to + 4),
		sum(SETTLING, peak, peak),
		sum(SETTLING, from - 2, to + 2),
		sum(PICKING_UP, peak, peak),
		sum(PICKING_UP, from - 3, from - 1),
		sum(COASTING, to + 1, to + 3),
		sum(RING_CHANGED, peak, peak),
		Math.log(
			(sum(SLIP, peak, peak) + 1e-13) / (sum(RING_CHANGED, peak, peak) + sum(SETTLING, peak, peak) + 1e-13)
		)
	);
}

/** What each second shows, in one record that is used over and over. */
function secondsShown(context: RideContext, start: number) {
	const { signals, powerAround } = context;
	const { speedMps, logRatio } = signals;
	const { cadenceRpm, powerW } = signals.grid;
	const shown = {
		ratio: NaN,
		ratioSd: 0,
		power: NaN,
		powerSd: 0,
		dipPower: NaN,
		missing: false,
		rpm: NaN,
		mps: NaN
	};
	return (second: number) => {
		const t = start + second;
		const rpm = cadenceRpm[t];
		const mps = speedMps[t];
		const before = speedMps[t - 1];
		const after = speedMps[t + 1];
		// a dip of speed alone is a missed pulse: the neighbours tell the speed
		const steady = middle(before, mps, after);
		shown.rpm = rpm;
		shown.mps = Math.max(mps, steady);
		shown.missing = Number.isNaN(rpm) || Number.isNaN(mps);
		shown.ratio = mps < steady ? logRatio[t] - Math.log(steady / mps) : logRatio[t];
		const change = Math.abs(after - before) / 2;
		const apart = change >= 0 ? (CLOCKS_APART_S * change) / mps : 0;
		shown.ratioSd = Math.hypot(0.9 * context.noise[t], ROUNDING_RPM / rpm, LEAST_SD, apart);
		const around = powerAround[t] > 0 ? powerAround[t] : context.usualPowerW;
		shown.power = powerW[t] / Math.max(LEAST_USUAL_W, around);
		shown.dipPower = Math.max(shown.power, powerW[t] / Math.max(LEAST_USUAL_W, filledUp(powerW, 4, t)));
		shown.powerSd = Math.max(0.1, Math.min(0.5, 1.2 * context.powerNoise[t]));
		return shown;
	};
}

function middle(a: number, b: number, c: number): number {
	if (Number.isNaN(a + c)) return b;
	return a + b + c - Math.max(a, b, c) - Math.min(a, b, c);
}
