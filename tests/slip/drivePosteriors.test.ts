import { describe, expect, it } from 'vitest';
import {
	AFTER_SLIP,
	COASTING,
	DRIVING,
	SLIP,
	STATES,
	TO_OTHER_GEAR,
	WITHIN_GEAR
} from '$lib/slip/driveModel';
import { drivePosteriors } from '$lib/slip/drivePosteriors';

const GEARS = Float64Array.of(-2, -1.9, -1.78, -1.65, -1.5);
const MPS = 7;

/** A stretch in the gear of -1.78 with full power; single seconds may show something else. */
function stretch(seconds: number, changed: Record<number, { ratio?: number; power?: number }>) {
	return (t: number) => {
		const ratio = changed[t]?.ratio ?? -1.78;
		return {
			ratio,
			ratioSd: 0.012,
			power: changed[t]?.power ?? 1,
			powerSd: 0.15,
			dipPower: changed[t]?.power ?? 1,
			missing: false,
			rpm: 60 * MPS * Math.exp(ratio),
			mps: MPS
		};
	};
}
const chanceOf = (chance: Float64Array, t: number, state: number) => chance[t * STATES + state];

describe('driveModel', () => {
	it('leaves each state with chances that add up to 1, within the third decimal', () => {
		WITHIN_GEAR.forEach((row, from) => {
			const within = row.reduce((sum, chance) => sum + chance, 0);
			const away = TO_OTHER_GEAR.filter((one) => one.from === from).reduce((sum, one) => sum + one.chance, 0);
			expect(within + away).toBeGreaterThan(0.97);
			expect(within + away).toBeLessThan(1.03);
		});
	});
});

describe('drivePosteriors', () => {
	it('gives chances that add up to 1 at each second', () => {
		const { chance } = drivePosteriors(15, stretch(15, { 7: { ratio: -1.4, power: 0.2 } }), GEARS);
		for (let t = 0; t < 15; t++) {
			let sum = 0;
			for (let s = 0; s < STATES; s++) sum += chanceOf(chance, t, s);
			expect(sum).toBeCloseTo(1, 9);
		}
	});

	it('takes a jump of the ratio with collapsed power for a slip of the right size', () => {
		const changed = { 7: { ratio: -1.5 + 0.09, power: 0.25 }, 8: { power: 0.4 } };
		const { chance, slipDeg } = drivePosteriors(15, stretch(15, changed), GEARS);
		expect(chanceOf(chance, 7, SLIP)).toBeGreaterThan(0.5);
		expect(chanceOf(chance, 8, AFTER_SLIP)).toBeGreaterThan(0.2);
		// 6 x 60 x 7 m/s x (exp(-1.41) - exp(-1.78)), by hand
		expect(slipDeg[7]).toBeGreaterThan(0.9 * 190);
		expect(slipDeg[7]).toBeLessThan(1.1 * 190);
	});

	it('takes a change of gear at kept power for driving on', () => {
		const changed = Object.fromEntries(
			Array.from({ length: 8 }, (_, i) => [i + 7, { ratio: -1.65, power: i === 0 ? 0.8 : 1 }])
		);
		const { chance } = drivePosteriors(15, stretch(15, changed), GEARS);
		expect(chanceOf(chance, 7, SLIP)).toBeLessThan(0.01);
		expect(chanceOf(chance, 10, DRIVING)).toBeGreaterThan(0.95);
	});

	it('takes a standing crank for coasting', () => {
		const changed = Object.fromEntries([7, 8, 9, 10].map((t) => [t, { ratio: NaN, power: 0 }]));
		const { chance } = drivePosteriors(15, stretch(15, changed), GEARS);
		expect(chanceOf(chance, 8, COASTING)).toBeGreaterThan(0.9);
	});

	it('sees less of a slip where power does not come back', () => {
		const show = (dipPower: number) => (t: number) => {
			const second = stretch(15, { 7: { ratio: -1.41, power: 0.3 } })(t);
			return t === 7 ? { ...second, dipPower } : second;
		};
		const slipChance = (dipPower: number) =>
			chanceOf(drivePosteriors(15, show(dipPower), GEARS).chance, 7, SLIP);
		expect(slipChance(1)).toBeLessThan(0.5 * slipChance(0.3));
	});
});
