import {
	AFTER_SLIP,
	COASTING,
	DRIVING,
	PICKING_UP,
	RING_CHANGED,
	SETTLING,
	SLIP,
	STATES
} from './driveModel';

/** What one second shows, in the units of the model. */
export interface SecondShown {
	/** ln(crank turns per metre); NaN where the crank or the wheel stands */
	ratio: number;
	/** expected scatter of the ratio */
	ratioSd: number;
	/** power against the power of the seconds around; NaN without power */
	power: number;
	/** the same, or power against the lower of its two sides where that is more: in a slip it comes back */
	dipPower: number;
	/** expected scatter of ln power */
	powerSd: number;
	/** nothing was recorded */
	missing: boolean;
}

/** Least share of the power around that is told apart from none. */
const LEAST_POWER = 0.03;
const MOST_POWER = 3;
/** Peak of Student's t density with three degrees of freedom: tails that shifts and dips need. */
const T3 = 0.3675526;
const T5 = 0.3796067;
const UNLIKELY = 1e-5;
/** Mean of ln(ratio / engaged ratio) in a slip, of the kind of 90 degrees at 60 rpm. */
const SLIP_EXCESS = 0.25;
const SETTLING_SD = 0.05;

/**
 * Density of what a second shows, for every state in every gear.
 *
 * @param shown the second
 * @param gears ln(crank turns per metre), ascending
 * @param out filled, index = state x number of gears + gear; not normalised
 */
export function driveEmissions(shown: SecondShown, gears: Float64Array, out: Float64Array): void {
	const count = gears.length;
	if (shown.missing) {
		out.fill(1);
		return;
	}
	const power = powerDensities(shown);
	const { ratio } = shown;
	if (Number.isNaN(ratio)) {
		const still = [2e-4, 2e-4, 1, 0.1, 2e-4, 0.2, 2e-4];
		for (let s = 0; s < STATES; s++) out.fill(still[s] * power[s] + UNLIKELY, s * count, (s + 1) * count);
		return;
	}
	const sd = shown.ratioSd;
	for (let g = 0; g < count; g++) {
		const off = ratio - gears[g];
		const z = off / sd;
		const spread = 1 + (z * z) / 5;
		const engaged = T5 / (sd * spread * spread * spread);
		const above = off > 0 ? off : 0;
		const zAbove = above / (1.5 * sd);
		const fall = 1 + (zAbove * zAbove) / 5;
		// the crank may lag behind the gear by any amount, and runs ahead of it by scatter only
		const behind = off > -1 ? 1 / (fall * fall * fall) : 0.1;
		out[g] = engaged * power[DRIVING] + UNLIKELY;
		// on the way to the new gear, or a little beyond it
		const zNear = off / SETTLING_SD;
		const near = 1 + (zNear * zNear) / 3;
		const settling = (0.5 * T3) / (SETTLING_SD * near * near) + (off < 0 && off > -0.4 ? 1.2 : 0);
		out[SETTLING * count + g] = settling * power[SETTLING] + UNLIKELY;
		out[COASTING * count + g] = behind * power[COASTING] + UNLIKELY;
		out[PICKING_UP * count + g] = 1.2 * behind * power[PICKING_UP] + UNLIKELY;
		const ahead = off > 0 ? (Math.exp(-off / SLIP_EXCESS) / SLIP_EXCESS) * (1 - Math.exp(-z * 0.5)) : 0;
		out[SLIP * count + g] = ahead * power[SLIP] + UNLIKELY * 0.01;
		const ring = off > 0.06 && off < 0.5 ? 2 : 0.02;
		out[RING_CHANGED * count + g] = ring * power[RING_CHANGED] + UNLIKELY;
		out[AFTER_SLIP * count + g] = (0.6 * engaged + 0.5 * behind) * power[AFTER_SLIP] + UNLIKELY;
	}
}

const densities = new Float64Array(STATES);

/** Densities of the power share by state; all 1 where power is not known. */
function powerDensities({ power, powerSd, dipPower }: SecondShown): Float64Array {
	if (Number.isNaN(power)) return densities.fill(1);
	const share = Math.max(LEAST_POWER, Math.min(MOST_POWER, power));
	const z = Math.log(share) / powerSd;
	const spread = 1 + (z * z) / 3;
	const kept = T3 / (powerSd * share * spread * spread);
	const collapsed = share < 1 ? 2 * (1 - share) : 0;
	const dip = Math.max(LEAST_POWER, Math.min(MOST_POWER, dipPower === dipPower ? dipPower : power));
	const gone = dip < 1 ? 2 * (1 - dip) : 0;
	const anything = share < 1.5 ? 0.6 : 0.06;
	densities[DRIVING] = kept + 0.005;
	densities[SETTLING] = 0.6 * kept + 0.4 * (share > 0.35 ? anything : 0.15);
	densities[RING_CHANGED] = densities[SETTLING];
	densities[COASTING] = (share < 0.3 ? 2.8 : 0) + 0.1 * anything;
	densities[PICKING_UP] = anything;
	densities[SLIP] = 0.06 * kept + 0.88 * gone + 0.06 * anything;
	densities[AFTER_SLIP] = 0.1 * kept + 0.84 * collapsed + 0.06 * anything;
	return densities;
}
