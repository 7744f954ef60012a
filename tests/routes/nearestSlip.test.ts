import { describe, expect, it } from 'vitest';
import type { SlipMark } from '$lib/charts/strip';
import { nearestSlip, neighbourSlip } from '../../src/routes/rides/[id]/nearestSlip';

const slips: SlipMark[] = [10, 40, 43].map((startS, index) => ({
	id: index + 1,
	number: index + 1,
	startS,
	endS: startS + 2,
	standing: 'unreviewed'
}));

describe('nearestSlip', () => {
	it('takes the one whose onset is nearest, and none where none is near', () => {
		expect(nearestSlip(slips, 42, 2)?.id).toBe(3);
		expect(nearestSlip(slips, 41, 2)?.id).toBe(2);
		expect(nearestSlip(slips, 25, 2)).toBeUndefined();
	});
});

describe('neighbourSlip', () => {
	it('goes from the open event, else from the read-out', () => {
		expect(neighbourSlip(slips, 2, 0, 1)?.id).toBe(3);
		expect(neighbourSlip(slips, 2, 0, -1)?.id).toBe(1);
		expect(neighbourSlip(slips, 3, 0, 1)).toBeUndefined();
		expect(neighbourSlip(slips, null, 20, 1)?.id).toBe(2);
		expect(neighbourSlip(slips, null, 20, -1)?.id).toBe(1);
	});
});
