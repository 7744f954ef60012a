import { describe, expect, it } from 'vitest';
import type { EventView } from '$lib/server/views';
import { createFormats } from '$lib/ui/formats';
import { overrunWords } from '../../src/routes/rides/[id]/overrunWords';

const formats = createFormats('en-GB', 'UTC');
const event = {
	overrunCrankDeg: { value: 90, lower: 60, upper: 120 },
	overrunHubDeg: 180,
	gear: '46/23'
} as EventView;

describe('overrunWords', () => {
	it('gives hub degrees with limits, the gear, and steps where the build says how large one is', () => {
		expect(overrunWords(event, { stepHubDeg: 15 }, formats)).toBe(
			'180 hub degrees (120 to 240) in 46/23, about 12 engagement steps (8 to 16)'
		);
	});

	it('leaves the steps out where the build does not say, and gives one decimal to few of them', () => {
		expect(overrunWords(event, { stepHubDeg: null }, formats)).toBe('180 hub degrees (120 to 240) in 46/23');
		const small = { ...event, overrunCrankDeg: { value: 9, lower: 6, upper: 12 }, overrunHubDeg: 18 };
		expect(overrunWords(small, { stepHubDeg: 15 }, formats)).toContain('about 1.2 engagement steps');
	});
});
