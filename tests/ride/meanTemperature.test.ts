import { expect, test } from 'vitest';
import { meanTemperature } from '$lib/ride/meanTemperature';

const recorded = (...values: number[]) => ({
	channels: {
		temperatureC: {
			timeS: Float64Array.from(values, (_, second) => second),
			value: Float64Array.from(values)
		}
	}
});

test('The mean is over the records that have a value; 0 degrees is a value', () => {
	expect(meanTemperature(recorded(0, 4, NaN, 8))).toEqual({ meanC: 4, recordedShare: 0.75 });
	expect(meanTemperature(recorded(0, 0))).toEqual({ meanC: 0, recordedShare: 1 });
});

test('A ride that hardly recorded one has none, and no device stands for 0 degrees', () => {
	expect(meanTemperature(recorded(20, NaN, NaN))).toBeNull();
	expect(meanTemperature(recorded(NaN, NaN))).toBeNull();
	expect(meanTemperature(recorded())).toBeNull();
	expect(meanTemperature({ channels: {} })).toBeNull();
});
