import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rideView } from '$lib/server';
import { analyseBytes } from '../../src/jobs/analysis/analyseBytes';
import { recordedGear } from '$lib/server/rides/recordedGear';
import { addRide, freshLedger } from './testLedger';

const nothing = { timeS: 0, frontIndex: null, frontTeeth: null, rearIndex: null, rearTeeth: null };

describe('recordedGear', () => {
	it('names teeth first, then positions, then what there is', () => {
		expect(recordedGear({ timeS: 2, frontIndex: 2, frontTeeth: 46, rearIndex: 4, rearTeeth: 22 })).toBe(
			'46/22'
		);
		expect(recordedGear({ ...nothing, frontIndex: 2, rearIndex: 4, rearTeeth: 22 })).toBe('no. 2/4');
		expect(recordedGear({ ...nothing, rearTeeth: 22 })).toBe('22 t');
		expect(recordedGear({ ...nothing, rearIndex: 4 })).toBe('no. 4');
	});

	it('says nothing where the recording does not', () => {
		expect(recordedGear(nothing)).toBe('');
		expect(recordedGear({ ...nothing, frontTeeth: 46 })).toBe('');
	});
});

describe('recorded shifts of a ride', () => {
	it('come from the file to the page', async () => {
		const file = await analyseBytes(readFileSync('sample-rides/2026-04-22-w1-r1.fit'), 'a.fit');
		const test = freshLedger();
		const shown = rideView(test.ledger, await addRide(test, { detail: file.detail }))!.shifts;
		expect(shown).toHaveLength(427);
		expect(shown.slice(0, 3)).toEqual([
			{ timeS: 2, gear: '46/22' },
			{ timeS: 3, gear: '46/25' },
			{ timeS: 3, gear: '46/28' }
		]);
	});

	it('are none where an older program read the file', async () => {
		const test = freshLedger();
		expect(rideView(test.ledger, await addRide(test))!.shifts).toEqual([]);
	});
});
