import { stackUp } from '$lib/hardware/stackUp';
import { stackWarnings, type StackLimits } from '$lib/hardware/stackWarnings';
import { describe, expect, it } from 'vitest';
import { element } from './elements';

const LIMITS: StackLimits = {
	tooWideMm: 0.5,
	rimOffsetMm: 1,
	engagementDepthMm: 4,
	endFloatMm: 0.1
};
const NOTHING_KNOWN = { overLocknutMm: null, rimOffsetMm: null, rimOffsetWantedMm: null };
const width = (totalMm: number, toleranceMm = 0) =>
	stackUp([element('hub', totalMm, { minusMm: toleranceMm, plusMm: toleranceMm })]);
const float = (mm: number, toleranceMm = 0) =>
	stackUp([
		element('inside the hub', 30 + mm, { inEndFloat: 1, minusMm: toleranceMm, plusMm: toleranceMm }),
		element('inside the hub', 30, { inEndFloat: -1 })
	]);

describe('stackWarnings', () => {
	it('says that a hub is too wide or too narrow for the frame, and when it only may be', () => {
		const wanted = { ...NOTHING_KNOWN, overLocknutMm: 142 };
		expect(stackWarnings(width(142.5), wanted, LIMITS)).toEqual([]);
		expect(stackWarnings(width(142.6), wanted, LIMITS)).toMatchObject([
			{ code: 'too wide', certain: true, valueMm: 142.6, limitMm: 142.5 }
		]);
		expect(stackWarnings(width(142.4, 0.2), wanted, LIMITS)).toMatchObject([
			{ code: 'too wide', certain: false }
		]);
		expect(stackWarnings(width(141.4), wanted, LIMITS)).toMatchObject([
			{ code: 'too narrow', certain: true }
		]);
	});

	it('says that negative end float is a clamped bearing whatever limits are set', () => {
		const none = { tooWideMm: null, rimOffsetMm: null, engagementDepthMm: null, endFloatMm: null };
		expect(stackWarnings(float(-0.02), NOTHING_KNOWN, none)).toMatchObject([
			{ code: 'bearing clamped', certain: true, limitMm: 0 }
		]);
		expect(stackWarnings(float(0.02, 0.05), NOTHING_KNOWN, none)).toMatchObject([
			{ code: 'bearing clamped', certain: false }
		]);
		expect(stackWarnings(float(0), NOTHING_KNOWN, none)).toEqual([]);
	});

	it('says that end float is too large and that engagement is too shallow', () => {
		expect(stackWarnings(float(0.12), NOTHING_KNOWN, LIMITS)).toMatchObject([
			{ code: 'end float too large', certain: true }
		]);
		const shallow = stackUp([
			element('inside the hub', 4.5, { inEngagement: 1 }),
			element('inside the hub', 0.6, { inEngagement: -1 })
		]);
		expect(stackWarnings(shallow, NOTHING_KNOWN, LIMITS)).toMatchObject([
			{ code: 'engagement too shallow', certain: true, limitMm: 4 }
		]);
	});

	it('holds the rim against where it is wanted, either way', () => {
		const rim = (rimOffsetMm: number) =>
			stackWarnings(width(142), { overLocknutMm: null, rimOffsetMm, rimOffsetWantedMm: 0.5 }, LIMITS);
		expect(rim(1.5)).toEqual([]);
		expect(rim(1.6)).toMatchObject([{ code: 'rim off', certain: true }]);
		expect(rim(-0.6)).toMatchObject([{ code: 'rim off' }]);
	});

	it('says nothing where nothing is known, and the certain before the possible', () => {
		expect(stackWarnings(stackUp([]), NOTHING_KNOWN, LIMITS)).toEqual([]);
		const both = stackUp([
			element('hub', 142.6, { minusMm: 0.3, plusMm: 0.3 }),
			element('inside the hub', 1, { inEndFloat: -1 })
		]);
		expect(
			stackWarnings(both, { ...NOTHING_KNOWN, overLocknutMm: 142 }, LIMITS).map(({ certain }) => certain)
		).toEqual([true, false]);
	});
});
