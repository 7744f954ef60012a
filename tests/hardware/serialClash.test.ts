import { describe, expect, it } from 'vitest';
import { serialClash, type SerialOnWheel } from '$lib/hardware/serialClash';

const piece = (periodId: number, change: Partial<SerialOnWheel> = {}): SerialOnWheel => ({
	periodId,
	buildId: periodId,
	wheelId: periodId,
	number: 'RR-36',
	serial: '7',
	fromMs: 0,
	untilMs: 10,
	...change
});

describe('serialClash', () => {
	it('finds one piece in two builds at the same time, the piece of this build first', () => {
		const pieces = [piece(1), piece(2, { fromMs: 9, untilMs: null })];
		expect(serialClash(pieces, 1)?.map(({ buildId }) => buildId)).toEqual([1, 2]);
		expect(serialClash(pieces, 2)?.map(({ buildId }) => buildId)).toEqual([2, 1]);
		expect(serialClash(pieces, 3)).toBeNull();
	});

	it('finds one build with a serial on two wheels at the same time', () => {
		expect(serialClash([piece(1), piece(2, { buildId: 1 })], 1)).not.toBeNull();
	});

	it('lets a piece move on: periods that only touch do not overlap', () => {
		expect(serialClash([piece(1), piece(2, { fromMs: 10, untilMs: null })], 1)).toBeNull();
	});

	it('takes the same serial of another part number for another piece, and "s7" for "S7"', () => {
		expect(serialClash([piece(1), piece(2, { number: 'PS-4' })], 1)).toBeNull();
		expect(serialClash([piece(1, { serial: 's7' }), piece(2, { serial: 'S7' })], 1)).not.toBeNull();
	});
});
