import { describe, expect, it } from 'vitest';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { createFormats } from '$lib/ui/formats';
import type { EventView } from '$lib/server/views';
import { cadenceDomain } from '$lib/charts/cadenceDomain';
import { CLOSE_UP_S } from '$lib/charts/gainedCloseUp';
import { gainedCloseUp } from '$lib/charts/gainedCloseUp';
import { gainedDomain } from '$lib/charts/gainedDomain';
import { readOut, spokenReadOut } from '../../src/routes/rides/[id]/readOut';
import { rideStripData } from '$lib/charts/rideStripData';
import { standingOf, standingWords } from '../../src/routes/rides/[id]/standingOf';

const DRIVING = DRIVE_STATES.indexOf('driving');
const SLIP = DRIVE_STATES.indexOf('slip');
const COASTING = DRIVE_STATES.indexOf('coasting');
const f32 = (...values: number[]) => Float32Array.from(values);
const event = (more: Partial<EventView>): EventView => ({
	id: 1,
	startS: 10,
	endS: 12,
	startedAt: '2026-05-04T08:00:00Z',
	kind: 'slip',
	overrunCrankDeg: { value: 120, lower: 100, upper: 140 },
	overrunHubDeg: 300,
	gear: null,
	hubTorqueNm: null,
	powerLost: null,
	strength: 0.9,
	observed: true,
	atM: 100,
	buildDistanceM: null,
	reasons: [],
	verdict: null,
	...more
});
const verdict = (said: 'confirmed' | 'rejected') => ({
	id: 1,
	verdict: said,
	reason: said === 'rejected' ? ('shift' as const) : null,
	note: '',
	by: 'A',
	at: '2026-05-05T08:00:00Z'
});

describe('standingOf', () => {
	it('keeps to the rate: slips of the reference size that begin on observed stretches', () => {
		expect(standingOf(event({}))).toBe('unreviewed');
		expect(standingOf(event({ verdict: verdict('confirmed') }))).toBe('confirmed');
		expect(standingOf(event({ overrunCrankDeg: { value: 90, lower: 60, upper: 120 } }))).toBe('unreviewed');
		expect(standingOf(event({ overrunCrankDeg: { value: 89.9, lower: 60, upper: 120 } }))).toBe('apart');
		expect(standingOf(event({ observed: false }))).toBe('apart');
		expect(standingOf(event({ kind: 'failed pick-up' }))).toBe('apart');
		expect(standingOf(event({ verdict: verdict('rejected') }))).toBe('rejected');
	});

	it('says why an event stands apart', () => {
		expect(standingWords(event({ observed: false }))).toContain('not observed');
		expect(standingWords(event({ kind: 'possible chain skip' }))).toContain('of another kind');
		expect(standingWords(event({ verdict: verdict('rejected') }))).toBe('rejected: shift');
	});
});

describe('gainedDomain', () => {
	it('grows in two steps a doubling and leaves a quarter below nought', () => {
		expect(gainedDomain([0, 40], null)).toEqual([-15, 60]);
		expect(gainedDomain([0, 230, NaN], 15)).toEqual([-90, 360]);
	});

	it('shows at least four engagement steps', () => {
		expect(gainedDomain([], 20)).toEqual([-20, 80]);
	});
});

describe('cadenceDomain', () => {
	it('stands on nought over a long stretch and takes the range in use close up', () => {
		const cadence = new Float32Array(600).fill(84);
		const engaged = new Float32Array(600).fill(76);
		expect(cadenceDomain(cadence, engaged, [0, 599])).toEqual([0, 90]);
		expect(cadenceDomain(cadence, engaged, [100, 115])).toEqual([70, 90]);
		// as long as the strips beside it are close up
		expect(cadenceDomain(cadence, engaged, [100, 100 + CLOSE_UP_S])).toEqual([70, 90]);
		expect(cadenceDomain(cadence, engaged, [100, 101 + CLOSE_UP_S])).toEqual([0, 90]);
	});

	it('stands on nought close up when the pedals stand still in view', () => {
		const cadence = new Float32Array(600).fill(84);
		cadence[105] = 0;
		expect(cadenceDomain(cadence, cadence, [100, 115])).toEqual([0, 90]);
	});

	it('is not stretched by the cadence that the wheel would ask for in fast coasting', () => {
		const engaged = new Float32Array(600).fill(190);
		expect(cadenceDomain(new Float32Array(600).fill(84), engaged, [0, 599])).toEqual([0, 90]);
	});
});

const data = rideStripData({
	length: 8,
	traces: {
		gainedHubDeg: f32(0, 10, 10, 130, 130, -500, -900, -900),
		state: f32(DRIVING, DRIVING, DRIVING, DRIVING, DRIVING, COASTING, COASTING, DRIVING),
		speedMps: f32(5, 5, 5, 5, 5, 5, 5, 5),
		distanceM: f32(0, 5, 10, 15, 20, 25, 30, 35),
		cadenceRpm: f32(80, 80, 80, 100, 80, 0, 0, 80)
	}
});

describe('gainedCloseUp', () => {
	it('counts from the first engaged second of the window, and afresh from the next pick-up', () => {
		const [{ high }] = gainedCloseUp(data, [3, 7]).levels;
		// second 2, the neighbour at the left, is the first engaged one
		expect([...high.slice(2)]).toEqual([0, 120, 120, -510, -910, 0]);
	});

	it('keeps the whole step of a failed pick-up that begins the window', () => {
		const failed = rideStripData({
			length: 5,
			traces: {
				gainedHubDeg: f32(-400, -900, -699, -650, -650),
				state: f32(COASTING, COASTING, SLIP, SLIP, DRIVING)
			}
		});
		expect([...gainedCloseUp(failed, [1, 4]).levels[0].high.slice(2)]).toEqual([201, 250, 250]);
	});
});

describe('readOut', () => {
	it('names what is not known instead of writing nought', () => {
		const items = readOut(data, data.raw.gained, 3, createFormats('en-GB', 'UTC'));
		const value = (name: string) => items.find((item) => item.name === name)?.value.replace('\u00a0', ' ');
		expect(value('Time')).toBe('0:03');
		expect(value('Speed')).toBe('18.0 km/h');
		expect(value('Gained (hub)')).toBe('130°');
		expect(value('Power')).toBe('not known');
		expect(value('Would show from')).toBe('no size');
		expect(value('Drive')).toBe('driving');
	});

	it('is spoken with what is known, the time first, and the event that lies there', () => {
		const items = readOut(data, data.raw.gained, 3, createFormats('en-GB', 'UTC'));
		const said = spokenReadOut(items, { number: 2 }).replaceAll('\u00a0', ' ');
		expect(said).toMatch(/^0:03; Distance /);
		expect(said).toContain('; Speed 18.0 km/h');
		expect(said).toContain('; Would show from no size');
		expect(said).not.toContain('not known');
		expect(said).toMatch(/; event 2, Enter opens it$/);
		expect(spokenReadOut(items, undefined)).not.toContain('event');
	});
});
