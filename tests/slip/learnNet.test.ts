import { describe, expect, it } from 'vitest';
import { netReader } from '$lib/slip/model/netModel';
import { emptyWindow, FACT, READ_S, WINDOW_BEFORE_S } from '$lib/slip/slipWindow';
import { random } from '../../sample-rides/generator/random';
import { learnNet } from '../bench/training/learnNet';
import { otherDevice } from '../bench/training/otherDevice';

const PEAK = WINDOW_BEFORE_S + 1;

/** Steady riding with a jump of cadence at the peak, in which power is lost or kept. */
function jump(seed: number, powerLost: boolean) {
	const chance = random(seed);
	const window = emptyWindow();
	window.cadenceRpm.fill(85);
	window.speedMps.fill(8);
	window.recorded.fill(NaN);
	window.followed.fill(NaN);
	window.nearest.fill(0);
	for (let k = 0; k < READ_S; k++) window.powerW[k] = chance.between(180, 220);
	window.cadenceRpm[PEAK] = chance.between(97, 110);
	if (powerLost) window.powerW[PEAK] *= chance.between(0, 0.3);
	window.facts[FACT['engaged ratio']] = Math.log(85 / (60 * 8));
	window.facts[FACT['ratio noise']] = 0.01;
	window.facts[FACT['power noise']] = 0.1;
	return window;
}

describe('otherDevice', () => {
	it('keeps cadence and speed at the engaged ratio that it tells', () => {
		for (let seed = 1; seed <= 30; seed++) {
			const window = jump(seed, true);
			otherDevice(window, random(seed));
			const told = window.facts[FACT['engaged ratio']];
			const ratios = [2, 5, 25, 30].map((k) => Math.log(window.cadenceRpm[k] / (60 * window.speedMps[k])));
			const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
			expect(Math.abs(mean - told)).toBeLessThan(0.02);
		}
	});

	it('does the same with the same seed, and something else with another', () => {
		const after = (seed: number) => {
			const window = jump(1, true);
			otherDevice(window, random(seed));
			return [...window.powerW];
		};
		expect(after(3)).toEqual(after(3));
		expect(after(3)).not.toEqual(after(4));
	});
});

describe('learnNet', () => {
	it('learns to tell jumps in which power is lost from those in which it is kept', () => {
		const taught = Array.from({ length: 300 }, (_, i) => jump(i, i % 2 === 0));
		const rows = {
			windows: taught.map(({ flat }) => flat),
			target: taught.map((_, i) => (i % 2 === 0 ? 1 : 0)),
			weight: taught.map(() => 1)
		};
		const parameters = learnNet(rows, 5, () => {}, 8);
		const read = netReader([parameters]);
		const right = Array.from({ length: 200 }, (_, i) => i).filter(
			(i) => read(jump(10_000 + i, i % 2 === 0)) > 0 === (i % 2 === 0)
		);
		expect(right.length).toBeGreaterThan(180);
	});
});
