import { inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { analyseBytes } from '../../src/jobs/analysis/analyseBytes';
import { onEvenClock } from '../../src/jobs/analysis/onEvenClock';
import type { PackedChannel } from '../../src/jobs/analysis/messages';
import { unpackValues } from '../../src/jobs/analysis/unpackValues';
import { loggerTable, loggerValues } from '../loggerTable';

describe('onEvenClock', () => {
	it('finds the usual step, takes the nearest value and leaves a gap open', () => {
		const timeS = [0, 0.0051, 0.0099, 0.015, 0.04, 0.0449, 0.05];
		const clock = onEvenClock(timeS, 0.05)!;
		expect(clock.sampleS).toBeCloseTo(0.005, 3);
		const even = onEvenClock([0, 0.01, 0.02, 0.05, 0.06, 0.07], 0.07)!;
		expect(even.sampleS).toBe(0.01);
		expect([...even.values([0, 0.011, 0.02, 0.05, 0.06, 0.07], [1, 2, 3, 4, 5, 6])]).toEqual([
			1,
			2,
			3,
			NaN,
			NaN,
			4,
			5,
			6
		]);
	});

	it('is none for a recording that is mostly gaps: laid out it would fill the memory', () => {
		const timeS = Array.from({ length: 4000 }, (_, i) => i * 0.002 + Math.floor(i / 100) * 10_000);
		expect(onEvenClock(timeS, timeS[3999])).toBeNull();
		expect(onEvenClock([5], 0)).toBeNull();
	});
});

function valuesOf(channel: PackedChannel): Float64Array {
	const values = new Float64Array(channel.length);
	let at = 0;
	for (const { level, count, packed } of channel.chunks) {
		if (level !== 0) continue;
		unpackValues(inflateRawSync(packed), channel.step, values, at, count);
		at += count;
	}
	return values;
}

describe('a logger ride as it is kept', { timeout: 60_000 }, () => {
	const table = { rateHz: 100, seconds: 200, slipsS: [120] };

	it('holds crank, engaged cadence, wheel and torque at the rate of the logger', async () => {
		const file = await analyseBytes(loggerTable(table), 'rig.csv', { circumferenceM: 2.1 });
		const fast = file.channels.filter(({ sampleS = 1 }) => sampleS < 1);
		expect(fast.map(({ name, sampleS, length }) => [name, sampleS, length])).toEqual([
			['crankRpm', 0.01, 20_000],
			['engagedRpm', 0.01, 20_000],
			['wheelMps', 0.01, 20_000],
			['crankTorqueNm', 0.01, 20_000]
		]);
		const [crank, engaged, wheel, torque] = fast.map(valuesOf);
		for (const i of [3000, 3011, 12_010, 19_999]) {
			const [crankRpm, wheelRpm, torqueNm] = loggerValues(table, i / 100);
			expect(Math.abs(crank[i] - crankRpm)).toBeLessThan(0.06);
			expect(Math.abs(wheel[i] - (wheelRpm * 2.1) / 60)).toBeLessThan(0.003);
			expect(Math.abs(torque[i] - torqueNm)).toBeLessThan(0.06);
		}
		// while the freehub holds crank and engaged cadence go together, ripple and all; in the slip they part
		expect(Math.abs(crank[3011] - engaged[3011])).toBeLessThan(0.03 * crank[3011]);
		expect(crank[12_010] / engaged[12_010]).toBeGreaterThan(1.9);
	});

	it('has nothing of the kind where a ride computer recorded once a second', async () => {
		const rows = Array.from({ length: 300 }, (_, i) => `${i},80,240,30`);
		const slow = Buffer.from(`time_s,crank_rpm,wheel_rpm,crank_torque_nm\n${rows.join('\n')}\n`);
		const file = await analyseBytes(slow, 'slow.csv');
		expect(file.channels.filter(({ sampleS = 1 }) => sampleS !== 1)).toEqual([]);
	});
});
