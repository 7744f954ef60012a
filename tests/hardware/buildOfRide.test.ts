import { buildOfRide, type FittedPeriod } from '$lib/hardware/buildOfRide';
import { describe, expect, it } from 'vitest';

const period = (change: Partial<FittedPeriod>): FittedPeriod => ({
	id: 1,
	wheelId: 1,
	buildId: 7,
	fromMs: 100,
	untilMs: 200,
	...change
});
const ride = (startMs: number, endMs: number) => ({ wheelId: 1, chosenBuildId: null, startMs, endMs });
const OLD = period({});
const NEW = period({ id: 2, buildId: 8, fromMs: 200, untilMs: null });

describe('buildOfRide', () => {
	it('gives the build whose period holds the whole ride', () => {
		expect(buildOfRide(ride(120, 150), [NEW, OLD])).toEqual({ kind: 'build', buildId: 7 });
		expect(buildOfRide(ride(900, 950), [NEW, OLD])).toEqual({ kind: 'build', buildId: 8 });
	});

	it('lets a ride end at the instant at which its build came off', () => {
		expect(buildOfRide(ride(150, 200), [OLD, NEW])).toEqual({ kind: 'build', buildId: 7 });
	});

	it('gives a ride that starts at the instant of the change to the new build', () => {
		expect(buildOfRide(ride(200, 250), [OLD, NEW])).toEqual({ kind: 'build', buildId: 8 });
	});

	it('takes no side for a ride across a change, and names the builds in order of time', () => {
		expect(buildOfRide(ride(150, 250), [NEW, OLD])).toEqual({ kind: 'across a change', buildIds: [7, 8] });
	});

	it('takes no side for a ride that begins before its build was fitted or ends after it came off', () => {
		expect(buildOfRide(ride(50, 150), [OLD]).kind).toBe('across a change');
		expect(buildOfRide(ride(150, 250), [OLD]).kind).toBe('across a change');
	});

	it('says so when nothing was fitted at that time, and ignores other wheels', () => {
		expect(buildOfRide(ride(10, 20), [OLD])).toEqual({ kind: 'no build' });
		expect(buildOfRide(ride(120, 150), [period({ wheelId: 2 })])).toEqual({ kind: 'no build' });
	});

	it('says so when the wheel is not known, whatever was chosen', () => {
		const unknown = { ...ride(120, 150), wheelId: null, chosenBuildId: 7 };
		expect(buildOfRide(unknown, [OLD])).toEqual({ kind: 'no wheel' });
	});

	it("lets a person's choice win over the periods", () => {
		const chosen = { ...ride(150, 250), chosenBuildId: 8 };
		expect(buildOfRide(chosen, [OLD, NEW])).toEqual({ kind: 'build', buildId: 8 });
	});
});
