import { describe, expect, it } from 'vitest';
import { tyreCircumferenceM } from '$lib/hardware/tyreCircumference';

/**
 * Designation by ISO 5775-1 and circumference in mm as printed in a table for wheel sensors: the file
 * WheelSizes.kt of an open-source library for speed and cadence sensors (BSD-3-Clause, 2023), as read in
 * November 2026. For some designations it prints two values, which differ by up to 1.9 %.
 */
const PRINTED: [string, number][] = [
	['60-622', 2340],
	['50-622', 2284],
	['47-622', 2268],
	['44-622', 2224],
	['40-635', 2265],
	['40-622', 2224],
	['38-622', 2180],
	['37-622', 2205],
	['35-622', 2168],
	['32-630', 2199],
	['32-630', 2161],
	['32-622', 2174],
	['32-622', 2155],
	['28-622', 2149],
	['28-622', 2136],
	['25-622', 2146],
	['25-622', 2105],
	['23-622', 2133],
	['23-622', 2097],
	['28-630', 2155],
	['60-559', 2146],
	['57-559', 2133],
	['54-559', 2114],
	['50-559', 2089],
	['47-559', 2070],
	['47-559', 2055],
	['37-590', 2105],
	['35-590', 2068]
];

describe('tyreCircumferenceM', () => {
	it('gives the 2130 mm of the worked example for 28-622', () => {
		// S. Brown, "Cyclecomputer Calibration" (web page): 622 + 2 x 28 = 678 mm, x 3.142 = 2130 mm
		expect(Math.round(tyreCircumferenceM('28-622') * 1000)).toBe(2130);
	});

	it('lies within 2 % of every printed value; two printed values of one tyre differ as much', () => {
		const off = PRINTED.map(([size, mm]) => Math.abs((tyreCircumferenceM(size) * 1000) / mm - 1));
		expect(Math.max(...off)).toBeLessThan(0.02);
		// on the whole it is not biased by more than 1 %
		const mean = PRINTED.reduce((sum, [size, mm]) => sum + (tyreCircumferenceM(size) * 1000) / mm - 1, 0);
		expect(Math.abs(mean / PRINTED.length)).toBeLessThan(0.01);
	});
});
