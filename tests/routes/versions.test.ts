import { describe, expect, it } from 'vitest';
import type { EventBrief, InsertionView } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { insertionSentence, shareWords } from '../../src/routes/rides/[id]/insertionWords';
import { differenceWords } from '../../src/routes/versions/differenceWords';

const formats = createFormats('en-GB', 'UTC');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const slip = (change: Partial<EventBrief> = {}): EventBrief => ({
	id: 1,
	startMs: 100_000,
	endMs: 102_000,
	startS: 100,
	kind: 'slip',
	crankDeg: 120,
	crankLowerDeg: 100,
	crankUpperDeg: 140,
	strength: 0.95,
	inRate: true,
	verdict: 'confirmed',
	...change
});

describe('differenceWords', () => {
	it('says of an event that vanished what was decided about it', () => {
		const words = differenceWords({ what: 'vanished', changes: [], before: slip(), after: null }, formats);
		expect(words).toEqual({
			what: 'gone',
			at: '1:40',
			sentence: 'Slip, 120 crank degrees, confirmed: not reported any more.'
		});
	});

	it('says of a new one how strong its signs are and whether it counts', () => {
		const after = slip({ verdict: null, strength: 0.4, inRate: false });
		expect(differenceWords({ what: 'appeared', changes: [], before: null, after }, formats).sentence).toBe(
			'Slip, 120 crank degrees, not reviewed, signs weak; apart from the rate.'
		);
	});

	it('names all that changed of one that both report', () => {
		const after = slip({ startS: 98, crankDeg: 160, strength: 0.3, kind: 'failed pick-up', inRate: false });
		const changes = ['start', 'kind', 'size', 'strength', 'rate'] as const;
		expect(differenceWords({ what: 'changed', changes, before: slip(), after }, formats).sentence).toBe(
			'Slip, 120 crank degrees, confirmed: begins 2.0\u00a0s earlier; now called failed pick-up; 160 instead of 120 crank degrees, beyond its limits; signs weak instead of strong; no longer in the rate.'
		);
	});
});

describe('words about slips put into a ride', () => {
	const share = (put: number, found: number) => ({
		put,
		found,
		share: found / put,
		lower: 0.734,
		upper: 0.979
	});
	const view = (observedPut: number, elsewherePut: number) =>
		({
			halfFound: null,
			sizes: [
				{ crankDeg: 30, observed: share(9, 0), elsewhere: share(3, 0) },
				{ crankDeg: 90, observed: share(observedPut, 27), elsewhere: share(elsewherePut, 3) }
			]
		}) as InsertionView;

	it('name the reference size, where it was put in, and the limits', () => {
		expect(plain(insertionSentence(view(30, 12), formats))).toBe(
			'Of slips of 90 crank degrees put into this ride, these were found: 27 of 30 (73 % to 98 %) on its observed stretches, 3 of 12 (73 % to 98 %) elsewhere.'
		);
	});

	it('say from which size on half are found, where the slips tell', () => {
		const halfFound = { crankDeg: 57.6, lower: 51.2, upper: 63.9 };
		expect(insertionSentence({ ...view(30, 12), halfFound }, formats)).toContain(
			'half of them are found from about 58 crank degrees on (51 to 64).'
		);
	});

	it('say so where even the upper limit lies below the nine in ten that observed stretches promise', () => {
		const low = view(30, 12);
		low.sizes[1].observed.upper = 0.88;
		expect(insertionSentence(low, formats)).toContain('fewer than the nine in ten');
		expect(insertionSentence(view(30, 12), formats)).not.toContain('nine in ten');
	});

	it('leave out where none was put in', () => {
		expect(insertionSentence(view(0, 12), formats)).not.toContain('observed');
		expect(insertionSentence(view(0, 0), formats)).toBe(
			'No slip of the reference size could be put into this ride.'
		);
		expect(shareWords(share(0, 0), formats)).toBe('none put in');
	});
});
