import { describe, expect, it } from 'vitest';
import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import { cutRatio } from '$lib/slip/cutRatio';

function signals(logRatio: number[], resting: number[] = []): DriveSignals {
	const pressing = Uint8Array.from(logRatio, (_, t) => (resting.includes(t) ? 0 : 1));
	return { logRatio: Float64Array.from(logRatio), pressing } as unknown as DriveSignals;
}

describe('cutRatio', () => {
	it('cuts a peak of one second to the higher of its two sides', () => {
		const peak = signals([-1.8, -1.8, -1.8, -1.5, -1.7, -1.7, -1.7]);
		expect(cutRatio(peak, 2, 3)).toBe(-1.7);
		expect(cutRatio(peak, 3, 3)).toBe(-1.7);
	});

	it('leaves a peak that lasts as long as the width', () => {
		const peak = signals([-1.8, -1.8, -1.5, -1.5, -1.5, -1.8, -1.8]);
		expect(cutRatio(peak, 3, 3)).toBe(-1.5);
		expect(cutRatio(peak, 4, 3)).toBe(-1.8);
	});

	it('lets changes of gear pass whole, however many follow each other', () => {
		const easier = [-2, -1.95, -1.9, -1.8, -1.62, -1.6, -1.5];
		for (const widthS of [2, 3, 4]) {
			expect(cutRatio(signals(easier), widthS, 3)).toBe(-1.8);
			expect(cutRatio(signals([...easier].reverse()), widthS, 3)).toBe(-1.8);
		}
	});

	it('takes no second without pressing for a side, but may ask about one', () => {
		const ratios = [-1.9, -1.9, -1.5, -1.4, -1.4];
		expect(cutRatio(signals(ratios, [2, 3, 4]), 2, 2)).toBe(-1.9);
		expect(cutRatio(signals(ratios, [1, 2, 3]), 2, 2)).toBeNaN();
	});
});
