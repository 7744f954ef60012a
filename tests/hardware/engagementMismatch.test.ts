import { describe, expect, it } from 'vitest';
import { engagementMismatch } from '$lib/hardware/engagementMismatch';

describe('engagementMismatch', () => {
	it('finds a ring whose points do not make the step that the build states', () => {
		expect(engagementMismatch('ring', 36, 15)).toBe(
			'ring has 36 points of engagement, which is a step of 10 hub degrees; the build says 15.'
		);
		expect(engagementMismatch('ring', 18, 15)).not.toBeNull();
	});

	it('accepts the step of the ring, rounded, and a whole fraction of it by offset pawls', () => {
		expect(engagementMismatch('ring', 24, 15)).toBeNull();
		expect(engagementMismatch('ring', 36, 5)).toBeNull();
		expect(engagementMismatch('ring', 54, 6.67)).toBeNull();
	});

	it('says nothing where one of the two is not known', () => {
		expect(engagementMismatch('ring', null, 15)).toBeNull();
		expect(engagementMismatch('ring', 36, null)).toBeNull();
	});
});
