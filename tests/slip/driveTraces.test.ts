import { describe, expect, it } from 'vitest';
import type { Gear } from '$lib/drivetrain/bike';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { driveTraces } from '$lib/slip/driveTraces';
import type { RideContext } from '$lib/slip/rideContext';

const gear = (ratio: number): Gear => ({
	label: `${ratio}:1`,
	ratio,
	developmentM: ratio * 2.1,
	chainring: null,
	sprocket: null,
	seconds: 100
});
const high = gear(3);
const low = gear(2);

/** ten seconds at 80 rpm in the high gear; in seconds 5 and 6 the crank runs at 120 rpm, as in the low gear */
function traces(followedGear: 0 | 1) {
	const seconds = 10;
	const speedMps = new Float64Array(seconds).fill((80 / 60) * high.developmentM);
	const cadenceRpm = new Float64Array(seconds).fill(80);
	const path = new Int16Array(seconds);
	const states = new Uint8Array(seconds).fill(DRIVE_STATES.indexOf('driving'));
	for (const t of [5, 6]) {
		cadenceRpm[t] = 120;
		path[t] = followedGear;
		states[t] = DRIVE_STATES.indexOf('slip');
	}
	const watts = new Float64Array(seconds).fill(200);
	const grid = { seconds, cadenceRpm, speedMps, powerW: watts, distanceM: watts };
	const context = { signals: { grid, speedMps }, path } as unknown as RideContext;
	return driveTraces(context, [high, low], states, new Float64Array(seconds), 'crank');
}

describe('driveTraces', () => {
	it('adds up what the crank gains on the wheel in hub degrees: 6 x 40 rpm x 3 a second', () => {
		expect([...traces(0).gainedHubDeg].map(Math.round)).toEqual([0, 0, 0, 0, 0, 720, 1440, 1440, 1440, 1440]);
	});

	it('keeps the gear from before a slip, though the crank in a slip turns as in a lower one', () => {
		expect([...traces(1).gainedHubDeg]).toEqual([...traces(0).gainedHubDeg]);
		expect(traces(1).engagedCadenceRpm[6]).toBeCloseTo(80, 9);
	});
});
