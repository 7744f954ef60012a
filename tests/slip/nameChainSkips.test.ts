import { describe, expect, it } from 'vitest';
import type { Gear } from '$lib/drivetrain/bike';
import type { SlipEvent } from '$lib/slip/analysis';
import { nameChainSkips } from '$lib/slip/nameChainSkips';

const gear = (sprocket: number, seconds: number): Gear => ({
	label: `48/${sprocket}`,
	ratio: 48 / sprocket,
	developmentM: (48 / sprocket) * 2.1,
	chainring: 48,
	sprocket,
	seconds
});
const GEARS = [gear(11, 600), gear(15, 1500), gear(19, 1500)];

const event = (crankDeg: number, inGear: Gear): SlipEvent => ({
	startS: 100,
	endS: 101,
	kind: 'slip',
	overrunCrankDeg: { value: crankDeg, lower: crankDeg - 2, upper: crankDeg + 2 },
	overrunHubDeg: crankDeg * inGear.ratio,
	gear: inGear,
	hubTorqueNm: null,
	powerLost: 0.5,
	strength: 0.5,
	atM: 0,
	observed: true,
	reasons: []
});
const kinds = (events: readonly SlipEvent[]) => nameChainSkips(events, GEARS).map(({ kind }) => kind);

describe('nameChainSkips', () => {
	it('names four overruns of one or two teeth (7.5 and 15 degrees of 48) in one sprocket that was ridden little', () => {
		const events = [7, 8, 14.5, 8].map((deg) => event(deg, GEARS[0]));
		expect(kinds(events)).toEqual(new Array(4).fill('possible chain skip'));
		expect(nameChainSkips(events, GEARS)[0].reasons.join(' ')).toContain('sprocket of 11');
	});

	it('leaves them slips when one lies in another sprocket: the clutch does not know which one is in', () => {
		const events = [7, 8, 14.5, 8].map((deg, i) => event(deg, GEARS[i === 3 ? 1 : 0]));
		expect(kinds(events)).toEqual(new Array(4).fill('slip'));
	});

	it('leaves them slips when one is of another size, when there are three, or when the sprocket was ridden most', () => {
		expect(kinds([7, 8, 30, 8].map((deg) => event(deg, GEARS[0])))).toEqual(new Array(4).fill('slip'));
		expect(kinds([7, 8, 8].map((deg) => event(deg, GEARS[0])))).toEqual(new Array(3).fill('slip'));
		expect(kinds([7, 8, 8, 7].map((deg) => event(deg, GEARS[1])))).toEqual(new Array(4).fill('slip'));
	});
});
