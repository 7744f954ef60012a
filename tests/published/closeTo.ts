import { expect } from 'vitest';

/** Holds `got` to `wanted` within a relative tolerance; names the case that failed. */
export function closeTo(got: number, wanted: number, relative: number, id: string): void {
	if (wanted === 0 || !Number.isFinite(wanted)) expect(got, id).toBe(wanted);
	else
		expect(Math.abs(got / wanted - 1), `${id}: got ${got}, wanted ${wanted}`).toBeLessThanOrEqual(relative);
}
