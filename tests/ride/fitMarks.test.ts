import { describe, expect, it } from 'vitest';
import { event, lap } from './fitBytes';
import { ride } from './rides';

describe('marks and shifts', () => {
	it('takes laps that a person pressed as marks, and no other laps', async () => {
		const read = await ride({
			also: (bytes) => [0, 1, 2, 3, 4, 5, 6, 7, 8].forEach((trigger) => lap(bytes, 5 + trigger, trigger))
		});
		expect(read.marks).toEqual([{ timeS: 5 }]);
	});

	it('takes a user marker as a mark, each instant once and in order', async () => {
		const read = await ride({ also: (bytes) => lap(event(lap(bytes, 12, 0), 7, 32, 3), 12, 0) });
		expect(read.marks).toEqual([{ timeS: 7 }, { timeS: 12 }]);
	});

	it('unpacks recorded shifts: rear position, rear teeth, front position, front teeth', async () => {
		const read = await ride({
			also: (bytes) => {
				event(bytes, 3, 43, 3, 5 + 21 * 256 + 2 * 65536 + 34 * 16777216);
				event(bytes, 9, 42, 3, 5 + 21 * 256 + 1 * 65536 + 24 * 16777216);
			}
		});
		expect(read.gearEvents).toEqual([
			{ timeS: 3, rearIndex: 5, rearTeeth: 21, frontIndex: 2, frontTeeth: 34 },
			{ timeS: 9, rearIndex: 5, rearTeeth: 21, frontIndex: 1, frontTeeth: 24 }
		]);
	});

	it('reads 0 and 255 as not known, carrying over the end that did not shift', async () => {
		const read = await ride({
			also: (bytes) => {
				event(bytes, 2, 42, 3, 255 + 255 * 256 + 2 * 65536 + 48 * 16777216);
				event(bytes, 4, 43, 3, 6 + 0 * 256 + 255 * 65536 + 255 * 16777216);
			}
		});
		expect(read.gearEvents[0]).toEqual({
			timeS: 2,
			rearIndex: null,
			rearTeeth: null,
			frontIndex: 2,
			frontTeeth: 48
		});
		expect(read.gearEvents[1]).toEqual({
			timeS: 4,
			rearIndex: 6,
			rearTeeth: null,
			frontIndex: 2,
			frontTeeth: 48
		});
	});

	it('keeps a shift from before the first record at the start', async () => {
		const read = await ride({ also: (bytes) => void event(bytes, -4, 43, 3, 5 + 21 * 256) });
		expect(read.gearEvents[0].timeS).toBe(0);
	});
});
