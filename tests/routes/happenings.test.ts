import { describe, expect, it } from 'vitest';
import type { WheelHistory } from '$lib/server';
import { happenings } from '../../src/routes/wheels/[id]/happenings';

const history: WheelHistory = {
	totalM: 30_000,
	recordedM: 25_000,
	unloggedM: 5000,
	builds: [
		{ id: 4, build: { id: 7, name: 'Old' }, fromM: 0, toM: 20_000, from: '2026-05-01T08:00:00Z', until: null }
	],
	gaps: [],
	services: [
		{
			id: 2,
			at: '2026-05-03T08:00:00Z',
			atM: 20_000,
			toM: 30_000,
			opened: 1,
			cleaned: 0,
			lubricant: '',
			amountG: null,
			partsTurned: '',
			note: '',
			byCode: 'P1'
		}
	],
	rides: [
		{ rideId: 9, startedAt: '2026-05-02T08:00:00Z', fromM: 0, toM: 20_000, observedM: 0, counted: true }
	],
	unlogged: [{ id: 1, at: '2026-05-02T18:00:00Z', fromM: 20_000, toM: 25_000, note: '' }],
	slips: [{ eventId: 5, rideId: 9, atM: 12_000, confirmed: false }],
	notices: [{ kind: 'incident', id: 3, at: '2026-05-04T08:00:00Z', atM: 25_000, words: 'slip, noticed' }],
	withoutBuildM: 0,
	corrected: null
};

describe('happenings', () => {
	it('are everything on the axis in order of distance, each with its page', () => {
		expect(happenings(1, history).map(({ what, href, atM }) => [what, href, atM])).toEqual([
			['Old fitted', '/builds/7', 0],
			['ride', '/rides/9', 0],
			['slip, not reviewed', '/rides/9?event=5', 12_000],
			['ridden without a recording', null, 20_000],
			['service, opened', null, 20_000],
			['incident: slip, noticed', '/wheels/1/incidents/3', 25_000]
		]);
	});

	it('say of a ride that it was not observed, and of unlogged distance nothing of the kind', () => {
		const rows = happenings(1, history);
		expect(rows.find(({ what }) => what === 'ride')!.observedM).toBe(0);
		expect(rows.find(({ what }) => what === 'ridden without a recording')!.observedM).toBeNull();
	});
});
