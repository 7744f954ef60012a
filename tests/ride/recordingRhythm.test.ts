import { describe, expect, it } from 'vitest';
import { event, seconds } from './fitBytes';
import { ride } from './rides';

describe('gaps, pauses and irregular recording', () => {
	it('calls a stretch without records a gap', async () => {
		const read = await ride({ seconds: [...seconds(10), ...seconds(10, 30)] });
		expect(read.gaps).toEqual([[9, 30]]);
		expect(read.pauses).toEqual([]);
		expect(read.irregular).toBe(false);
	});

	it('calls it a pause where the timer was stopped, and no gap', async () => {
		const read = await ride({
			seconds: [...seconds(10), ...seconds(10, 30)],
			also: (bytes) => {
				event(bytes, 10, 0, 4);
				event(bytes, 29, 0, 0);
				event(bytes, 39, 0, 4);
			}
		});
		expect(read.pauses).toEqual([[10, 29]]);
		expect(read.gaps).toEqual([]);
	});

	it('makes one of pauses that touch, and cuts them to the ride', async () => {
		const read = await ride({
			seconds: [...seconds(10), ...seconds(10, 40)],
			also: (bytes) => {
				for (const [stop, start] of [
					[-30, -20],
					[10, 25],
					[25, 39],
					[49, 80]
				]) {
					event(event(bytes, stop, 0, 4), start, 0, 0);
				}
			}
		});
		expect(read.pauses).toEqual([[10, 39]]);
		expect(read.gaps).toEqual([]);
	});

	it('does not let a short pause explain a long gap', async () => {
		const read = await ride({
			seconds: [...seconds(10), ...seconds(10, 60)],
			also: (bytes) => void event(event(bytes, 10, 0, 4), 20, 0, 0)
		});
		expect(read.gaps).toEqual([[9, 60]]);
	});

	it('knows a device that leaves out samples, and does not call each of its steps a gap', async () => {
		const read = await ride({ seconds: [0, 1, 2, 6, 7, 8, 11, 16, 17, 18, 19, 24, 25, 60, 61, 62] });
		expect(read.irregular).toBe(true);
		expect(read.gaps).toEqual([[25, 60]]);
	});
});
