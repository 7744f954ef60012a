import { describe, expect, it } from 'vitest';
import { heldWindow, pannedWindow, windowAroundEvent, zoomedWindow } from '$lib/charts/timeWindow';

describe('zoomedWindow', () => {
	it('keeps the point under the pointer where it is', () => {
		expect(zoomedWindow([0, 100], 0.5, 20, 1000)).toEqual([10, 60]);
	});

	it('stops at the whole ride and at five seconds', () => {
		expect(zoomedWindow([400, 600], 100, 500, 1000)).toEqual([0, 1000]);
		const [from, to] = zoomedWindow([400, 410], 0.01, 405, 1000);
		expect(to - from).toBe(5);
		expect((from + to) / 2).toBe(405);
	});
});

describe('pannedWindow', () => {
	it('moves by a share of its width and keeps its width at the end of the ride', () => {
		expect(pannedWindow([100, 200], 0.5, 1000)).toEqual([150, 250]);
		expect(pannedWindow([880, 980], 1, 1000)).toEqual([900, 1000]);
		expect(pannedWindow([20, 120], -1, 1000)).toEqual([0, 100]);
	});
});

describe('windowAroundEvent', () => {
	it('shows fifteen seconds around a short event, a third of them before it', () => {
		expect(windowAroundEvent(100, 102, 1000)).toEqual([95, 110]);
	});

	it('shows all of a long event', () => {
		const [from, to] = windowAroundEvent(100, 130, 1000);
		expect(from).toBeLessThan(100);
		expect(to).toBeGreaterThan(120);
		expect(to - from).toBe(40);
	});

	it('stays inside the ride', () => {
		expect(windowAroundEvent(1, 2, 1000)).toEqual([0, 15]);
		expect(windowAroundEvent(2, 3, 8)).toEqual([0, 8]);
	});
});

describe('heldWindow', () => {
	it('keeps a window that is too close around its centre', () => {
		expect(heldWindow([50, 51], 1000)).toEqual([48, 53]);
	});
});
