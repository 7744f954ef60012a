import { describe, expect, it } from 'vitest';
import { cadenceByTurn } from '$lib/drivetrain/cadenceByTurn';

/** Twenty stops: a minute at 85 rpm, then what the sensor shows as the crank stops, then ten seconds of nothing. */
function ridesWith(stop: readonly number[], stops = 20): Float64Array {
	const values: number[] = [];
	for (let n = 0; n < stops; n++) values.push(...new Array(60).fill(85), ...stop, ...new Array(10).fill(0));
	return Float64Array.from(values);
}

describe('cadenceByTurn', () => {
	it('recognises a sensor that waits for the next turn by the stops without a value in between', () => {
		expect(cadenceByTurn(ridesWith([85, 85, 0]))).toBe(true);
	});

	it('recognises means over the second by the part of the old cadence that they show', () => {
		expect(cadenceByTurn(ridesWith([85, 40, 0]))).toBe(false);
	});

	it('says nothing of a ride with few stops', () => {
		expect(cadenceByTurn(ridesWith([85, 85, 0], 10))).toBe(false);
		expect(cadenceByTurn(new Float64Array(0))).toBe(false);
	});
});
