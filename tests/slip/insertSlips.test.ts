import { describe, expect, it } from 'vitest';
import { random } from '../../sample-rides/generator/random';
import { insertSlips } from '../bench/training/insertSlips';
import { steadyRecords, toRide } from './steadyRide';

/** What slips put into steady rides changed, second by second from the one before each. */
function changes() {
	const out: { crankDeg: number; rpm: number[]; watts: number[]; mps: number[] }[] = [];
	for (let seed = 1; seed <= 12; seed++) {
		const before = toRide(steadyRecords(seed));
		const { ride, events } = insertSlips(before, 120, random(seed));
		for (const { t0, crankDeg } of events) {
			const at = Math.floor(t0);
			const differ = (name: 'cadenceRpm' | 'powerW' | 'speedMps', relative: boolean) =>
				Array.from({ length: 12 }, (_, k) => {
					const was = before.channels[name]!.value[at + k];
					const is = ride.channels[name]!.value[at + k];
					return relative ? (is - was) / was : is - was;
				});
			out.push({
				crankDeg,
				rpm: differ('cadenceRpm', false),
				watts: differ('powerW', true),
				mps: differ('speedMps', false)
			});
		}
	}
	return out;
}
const middle = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1];
const sum = (values: number[]) => values.reduce((all, value) => all + value, 0);

describe('insertSlips', () => {
	const slips = changes();

	it('gives the crank the angle of the slip, as far as whole rpm tell', () => {
		expect(slips.length).toBeGreaterThan(60);
		const found = slips.map(({ crankDeg, rpm }) => (6 * sum(rpm)) / crankDeg);
		expect(middle(found)).toBeGreaterThan(0.85);
		expect(middle(found)).toBeLessThan(1.1);
	});

	it('takes most of a second of drive away, the slip itself and until the rider presses again', () => {
		const lostS = slips.map(({ watts }) => -sum(watts));
		expect(middle(lostS)).toBeGreaterThan(0.6);
		expect(middle(lostS)).toBeLessThan(2);
	});

	it('slows the wheel for longer than the slip lasts, by what 70 to 105 kg lose without drive', () => {
		expect(slips.every(({ mps }) => mps.every((change) => change <= 1e-12))).toBe(true);
		// 200 W at 7 m/s take about 0.3 m/s of each second without drive
		const most = slips.map(({ mps }) => -Math.min(...mps));
		expect(middle(most)).toBeGreaterThan(0.03);
		expect(Math.max(...most)).toBeLessThan(0.9);
		expect(middle(slips.map(({ mps }) => mps[7] / Math.min(...mps)))).toBeGreaterThan(0.2);
	});
});
