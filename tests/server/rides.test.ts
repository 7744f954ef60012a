import { describe, expect, it } from 'vitest';
import {
	assignRide,
	createBuild,
	decideTwin,
	fitBuild,
	listRides,
	programmeRows,
	restoreRide,
	rideView,
	withdrawRide
} from '$lib/server';
import { rideStanding } from '$lib/server/rides/rideStanding';
import { sameRecording } from '$lib/server/rides/sameRecording';
import {
	addRide,
	analysedFile,
	freshLedger,
	HOUR_MS,
	rowsOf,
	slipAt,
	START_MS,
	withHardware
} from './testLedger';

const build = { kind: 'build', buildId: 1 } as const;
const sound = {
	withdrawnReason: null,
	build,
	parts: [],
	trainer: false,
	motorAssisted: false,
	twin: null,
	analysed: true,
	analysisFailure: null
};

describe('rideStanding', () => {
	it('counts a ride about which everything is known', () => {
		expect(rideStanding(sound)).toEqual({ state: 'counted', reason: null, needs: [] });
	});

	it.each([
		[{ withdrawnReason: 'chain fell off' }, 'withdrawn', 'chain fell off'],
		[{ trainer: true }, 'left out', 'ridden on an indoor trainer'],
		[{ motorAssisted: true }, 'left out', 'a motor helped'],
		[{ analysed: false }, 'left out', 'the present version of the analysis has no result for it yet'],
		[
			{ analysed: false, analysisFailure: 'No speed.' },
			'left out',
			'the present version of the analysis does not take it: No speed.'
		],
		[
			{ twin: { fileName: 'a.fit', decision: 'same recording' as const } },
			'left out',
			'the same recording as a.fit'
		]
	])('leaves out %j with the reason', (change, state, reason) => {
		expect(rideStanding({ ...sound, ...change })).toEqual({ state, reason, needs: [] });
	});

	it('asks everything that is open, at once', () => {
		const twin = { fileName: 'a.fit', decision: null };
		const { state, needs } = rideStanding({ ...sound, twin, build: { kind: 'no wheel' } });
		expect(state).toBe('needs an answer');
		expect(needs).toHaveLength(2);
	});

	it('counts a look-alike that a person called a different ride', () => {
		const twin = { fileName: 'a.fit', decision: 'different ride' as const };
		expect(rideStanding({ ...sound, twin }).state).toBe('counted');
	});
});

describe('what counts nowhere', () => {
	const total = (ledger: Parameters<typeof programmeRows>[0]) =>
		programmeRows(ledger).map(({ rides, totalM, counted }) => [rides, totalM, counted.worstCase.count]);

	it('a withdrawn ride: neither its slips nor its kilometres, until it is restored', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { events: [slipAt(100)] });
		expect(total(test.ledger)).toEqual([[1, 30_000, 1]]);
		withdrawRide(test.ledger, test.actor, rideId, 'wrong bicycle');
		expect(total(test.ledger)).toEqual([[0, 0, 0]]);
		expect(rideView(test.ledger, rideId)).toMatchObject({
			state: 'withdrawn',
			stateReason: 'wrong bicycle',
			eventList: [{ buildDistanceM: null }]
		});
		expect(() => withdrawRide(test.ledger, test.actor, rideId, 'again')).toThrow('already');
		expect(() => withdrawRide(test.ledger, test.actor, rideId, '')).toThrow('reason');
		restoreRide(test.ledger, test.actor, rideId);
		expect(total(test.ledger)).toEqual([[1, 30_000, 1]]);
		expect(() => restoreRide(test.ledger, test.actor, rideId)).toThrow('not withdrawn');
	});

	it('a trainer ride, whether the file says so or a person, and a person may overrule the file', async () => {
		const test = freshLedger();
		withHardware(test);
		const said = await addRide(test, { trainer: true });
		const other = await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS });
		expect(total(test.ledger)).toEqual([[1, 30_000, 0]]);
		assignRide(test.ledger, test.actor, other, { trainer: true });
		expect(total(test.ledger)).toEqual([[0, 0, 0]]);
		assignRide(test.ledger, test.actor, said, { trainer: false });
		expect(total(test.ledger)).toEqual([[1, 30_000, 0]]);
	});

	it('a ride across a change of build, until a person says which build', async () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		const next = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		const rideId = await addRide(test, { events: [slipAt(100)] });
		fitBuild(test.ledger, test.actor, {
			wheelId,
			buildId: next,
			from: new Date(START_MS + HOUR_MS / 2).toISOString()
		});
		expect(total(test.ledger)).toEqual([
			[0, 0, 0],
			[0, 0, 0]
		]);
		expect(listRides(test.ledger, { page: 1, pageSize: 9, onlyNeeds: true }).total).toBe(1);
		assignRide(test.ledger, test.actor, rideId, { buildId });
		expect(total(test.ledger)).toEqual([
			[1, 30_000, 1],
			[0, 0, 0]
		]);
		assignRide(test.ledger, test.actor, rideId, { buildId: null });
		expect(rideView(test.ledger, rideId)!.state).toBe('needs an answer');
	});

	it('the same ride in other bytes, until a person decides', async () => {
		const test = freshLedger();
		withHardware(test);
		const first = await addRide(test, { events: [slipAt(100)] });
		const second = await addRide(test, { events: [slipAt(100)], format: 'tcx' });
		expect(total(test.ledger)).toEqual([[1, 30_000, 1]]);
		expect(rideView(test.ledger, second)!.twinOf).toEqual({ id: first, fileName: 'ride.fit' });
		decideTwin(test.ledger, test.actor, second, 'same recording');
		expect(total(test.ledger)).toEqual([[1, 30_000, 1]]);
		expect(rideView(test.ledger, second)!.needs).toEqual([]);
		decideTwin(test.ledger, test.actor, second, 'different ride');
		expect(total(test.ledger)).toEqual([[2, 60_000, 2]]);
		expect(() => decideTwin(test.ledger, test.actor, first, 'different ride')).toThrow('not look like');
	});

	it('a third export, also of a ride that was called different from the first', async () => {
		const test = freshLedger();
		withHardware(test);
		const first = await addRide(test);
		const second = await addRide(test);
		decideTwin(test.ledger, test.actor, second, 'different ride');
		// now only the second is left to be recognised
		test.ledger.database.prepare('DELETE FROM ride_signature WHERE ride_id = ?').run(first);
		const third = await addRide(test);
		expect(rideView(test.ledger, third)!.twinOf?.id).toBe(second);
		expect(total(test.ledger)).toEqual([[2, 60_000, 0]]);
	});

	it('a third export whose first one is withdrawn: it is asked about the one that counts', async () => {
		const test = freshLedger();
		withHardware(test);
		const first = await addRide(test);
		const second = await addRide(test);
		withdrawRide(test.ledger, test.actor, first, 'a worse export');
		const third = await addRide(test);
		expect(rideView(test.ledger, third)!.twinOf?.id).toBe(second);
		expect(total(test.ledger)).toEqual([[1, 30_000, 0]]);
	});

	it('all copies but one of a ride that is withdrawn', async () => {
		const test = freshLedger();
		withHardware(test);
		const first = await addRide(test);
		const second = await addRide(test);
		const third = await addRide(test);
		for (const id of [second, third]) decideTwin(test.ledger, test.actor, id, 'same recording');
		withdrawRide(test.ledger, test.actor, first, 'a worse export');
		expect(total(test.ledger)).toEqual([[1, 30_000, 0]]);
		expect(rideView(test.ledger, third)!.twinOf?.id).toBe(second);
		restoreRide(test.ledger, test.actor, first);
		expect(total(test.ledger)).toEqual([[1, 30_000, 0]]);
		expect(rideView(test.ledger, first)!.state).toBe('counted');
	});

	it('and a look-alike counts again when the ride it looks like is withdrawn', async () => {
		const test = freshLedger();
		withHardware(test);
		const first = await addRide(test);
		const second = await addRide(test);
		decideTwin(test.ledger, test.actor, second, 'same recording');
		withdrawRide(test.ledger, test.actor, first, 'a worse export');
		expect(rideView(test.ledger, second)!.state).toBe('counted');
		expect(total(test.ledger)).toEqual([[1, 30_000, 0]]);
	});
});

describe('sameRecording', () => {
	const recording = (change = {}) => {
		const { startedAtMs, signature } = analysedFile(change);
		return { startedMs: startedAtMs, signature };
	};

	it('knows a ride again, also when an export begins or ends a little later', () => {
		expect(sameRecording(recording(), recording())).toBe(true);
		expect(sameRecording(recording(), recording({ durationS: 3400 }))).toBe(true);
		const later = recording();
		const cut = { startedMs: later.startedMs + 20_000, signature: later.signature.subarray(8) };
		expect(sameRecording(recording(), cut)).toBe(true);
	});

	it('tells rides apart that began together but were pedalled differently', () => {
		const other = recording();
		const view = new DataView(other.signature.slice().buffer);
		for (let at = 2; at < view.byteLength; at += 4) view.setInt16(at, 60 + ((at * 7) % 40), true);
		expect(sameRecording(recording(), { ...other, signature: new Uint8Array(view.buffer) })).toBe(false);
	});

	it('does not judge where too little overlaps or nothing moved', () => {
		expect(sameRecording(recording({ durationS: 30 }), recording({ durationS: 30 }))).toBe(false);
		const still = { startedMs: 0, signature: new Uint8Array(400) };
		expect(sameRecording(still, still)).toBe(false);
	});
});

describe('assignRide', () => {
	it('changes what is named, and leaves what was and what is in the trail', async () => {
		const test = freshLedger();
		const rideId = await addRide(test, {}, { wet: true });
		assignRide(test.ledger, test.actor, rideId, { riderId: test.actor.personId, wet: false });
		expect(rideView(test.ledger, rideId)).toMatchObject({ rider: { code: 'P1' }, wet: false });
		const [{ detail }] = rowsOf(test.ledger, "SELECT detail FROM trail WHERE action = 'assigned'");
		expect(JSON.parse(String(detail))).toEqual({
			riderId: { before: null, after: 1 },
			wet: { before: 1, after: 0 }
		});
		assignRide(test.ledger, test.actor, rideId, { wet: false });
		expect(rowsOf(test.ledger, "SELECT 1 FROM trail WHERE action = 'assigned'")).toHaveLength(1);
	});

	it('refuses wheels, builds, riders and rides that do not exist, and changes nothing', async () => {
		const test = freshLedger();
		const rideId = await addRide(test);
		for (const wrong of [{ wheelId: 9 }, { buildId: 9 }, { riderId: 9 }, { wet: true, wheelId: 9 }])
			expect(() => assignRide(test.ledger, test.actor, rideId, wrong)).toThrow('no such');
		expect(() => assignRide(test.ledger, test.actor, 99, { wet: true })).toThrow('no such ride');
		expect(rideView(test.ledger, rideId)!.wet).toBeNull();
	});
});

describe('listRides', () => {
	it('gives pages of the newest first, with the number of all', async () => {
		const test = freshLedger();
		for (let day = 0; day < 5; day++)
			await addRide(test, { startedAtMs: START_MS + day * 24 * HOUR_MS, totalM: 1000 * (day + 1) });
		const { rows, total } = listRides(test.ledger, { page: 2, pageSize: 2 });
		expect(total).toBe(5);
		expect(rows.map(({ totalM }) => totalM)).toEqual([3000, 2000]);
		expect(listRides(test.ledger, { page: 9, pageSize: 2 }).rows).toEqual([]);
		expect(listRides(test.ledger, { page: NaN, pageSize: NaN }).rows).toHaveLength(1);
	});
});
