import { describe, expect, it } from 'vitest';
import {
	answerRides,
	answersView,
	assignRide,
	createBuild,
	createWheel,
	fitBuild,
	programmeRows,
	rideAnswersView,
	rideView,
	undoAnswers,
	withdrawRide
} from '$lib/server';
import { addPerson } from '$lib/server/people/people';
import { addRide, freshLedger, HOUR_MS, rowsOf, START_MS, withHardware, type TestLedger } from './testLedger';

const instant = (ms: number) => new Date(ms).toISOString();

function addBike({ ledger }: TestLedger, name: string, motor: number | null = null): number {
	const { lastInsertRowid } = ledger.database
		.prepare('INSERT INTO bike (name, motor, created_ms) VALUES (?, ?, 0)')
		.run(name, motor);
	return Number(lastInsertRowid);
}

const gears = (...developments: number[]) => ({
	gears: developments.map((developmentM) => ({
		label: `${developmentM}`,
		ratio: developmentM / 2,
		developmentM,
		chainring: null,
		sprocket: null,
		seconds: 300
	})),
	warnings: [],
	sensors: [],
	marksS: [],
	gaps: [],
	pauses: []
});

const openOf = (test: TestLedger, name: string) =>
	answersView(test.ledger, null).questions.find((question) => question.name === name)!.rides;

describe('answersView', () => {
	it('counts each question over all rides and begins with those that hold rides back', async () => {
		const test = freshLedger();
		await addRide(test);
		await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS }, { wet: true });
		createWheel(test.ledger, test.actor, { name: 'A', hub: '' });
		const view = answersView(test.ledger, null);
		expect(view.chosen).toMatchObject({ name: 'wheel', rides: 2, holdsBack: true });
		expect([openOf(test, 'wet'), openOf(test, 'surface'), openOf(test, 'twin')]).toEqual([1, 2, 0]);
		expect(answersView(test.ledger, 'surface').chosen!.name).toBe('surface');
	});

	it('asks nothing about rides that no answer would make count', async () => {
		const test = freshLedger();
		const rideId = await addRide(test);
		await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS, trainer: true });
		withdrawRide(test.ledger, test.actor, rideId, 'wrong bicycle');
		expect(answersView(test.ledger, null)).toMatchObject({ chosen: null, rows: [] });
	});

	it('asks what laps mean only where the rider pressed one, and about a motor only on a bike that has one', async () => {
		const test = freshLedger();
		withHardware(test);
		const exposure = { cells: [], hours: [], marks: [{ timeS: 600, observed: true }] };
		const withLap = await addRide(test, { exposure });
		const other = await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS });
		expect(answersView(test.ledger, 'lapsMeanSlips').rows.map(({ ride }) => ride.id)).toEqual([withLap]);
		expect(openOf(test, 'motor')).toBe(0);
		assignRide(test.ledger, test.actor, other, { bikeId: addBike(test, 'With a motor', 1) });
		expect(answersView(test.ledger, 'motor').rows.map(({ ride }) => ride.id)).toEqual([other]);
	});

	it('offers the bike whose learned gears are nearest, with the figure, and none without a clear lead', async () => {
		const test = freshLedger();
		withHardware(test);
		const [near, far] = [addBike(test, 'Near'), addBike(test, 'Far')];
		const known = await addRide(test, { detail: gears(4, 6) });
		assignRide(test.ledger, test.actor, known, { bikeId: near });
		const otherBike = await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS, detail: gears(4.4, 6.6) });
		assignRide(test.ledger, test.actor, otherBike, { bikeId: far });
		const asked = await addRide(test, { startedAtMs: START_MS + 9 * HOUR_MS, detail: gears(4.02, 6.03) });
		const between = await addRide(test, { startedAtMs: START_MS + 13 * HOUR_MS, detail: gears(4.2, 6.3) });
		const rows = new Map(answersView(test.ledger, 'bike').rows.map((row) => [row.ride.id, row]));
		expect(rows.get(asked)).toMatchObject({
			sure: true,
			offered: String(near),
			reason: 'its gears lie 0.5 % from those of Near; next Far, 9.0 %'
		});
		expect(rows.get(between)).toMatchObject({ offered: null, reason: null });
	});

	it('offers the bike whose stated gears fit, with cassette and circumference of its wheel, before any ride of it', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const bikeId = addBike(test, 'Stated');
		const { database } = test.ledger;
		database.prepare("UPDATE bike SET chainrings = '[40]' WHERE id = ?").run(bikeId);
		database.prepare("UPDATE wheel SET cassette = '[10,20]', circumference_m = 2 WHERE id = ?").run(wheelId);
		database
			.prepare('INSERT INTO wheel_on_bike (wheel_id, bike_id, from_ms, created_ms) VALUES (?, ?, ?, 0)')
			.run(wheelId, bikeId, START_MS + 900 * HOUR_MS);
		await addRide(test, { detail: gears(4.02, 8.04) });
		await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS, detail: gears(4.1, 8.2) });
		const [far, near] = answersView(test.ledger, 'bike').rows;
		expect(near).toMatchObject({
			offered: String(bikeId),
			reason: 'its gears lie 0.5 % from those of Stated'
		});
		expect(far).toMatchObject({ offered: null });
	});

	it('asks nothing about the bike where the wheel was on one at that time, and offers the wheel of a bike', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const bikeId = addBike(test, 'Tourer');
		test.ledger.database
			.prepare('INSERT INTO wheel_on_bike (wheel_id, bike_id, from_ms, created_ms) VALUES (?, ?, ?, 0)')
			.run(wheelId, bikeId, START_MS - HOUR_MS);
		const rideId = await addRide(test);
		expect(openOf(test, 'bike')).toBe(0);
		expect(rideAnswersView(test.ledger, rideId)).toMatchObject({ bike: null, bikeUnder: 'Tourer' });
		assignRide(test.ledger, test.actor, rideId, { bikeId, wheelId: null });
		expect(answersView(test.ledger, 'wheel').rows[0]).toMatchObject({
			offered: String(wheelId),
			reason: 'Wheel A was on that bike at that time'
		});
	});

	it('offers the wheel of the bike whose gears it were before the wheel that the rider rode last', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const other = createWheel(test.ledger, test.actor, { name: 'Wheel B', hub: '' });
		const onBike = test.ledger.database.prepare(
			'INSERT INTO wheel_on_bike (wheel_id, bike_id, from_ms, created_ms) VALUES (?, ?, ?, 0)'
		);
		onBike.run(wheelId, addBike(test, 'Tourer'), START_MS - HOUR_MS);
		onBike.run(other, addBike(test, 'Racer'), START_MS - HOUR_MS);
		const riderId = test.actor.personId;
		await addRide(test, { detail: gears(4, 6) }, { wheelId, riderId });
		const lastMs = START_MS + 5 * HOUR_MS;
		await addRide(test, { startedAtMs: lastMs, detail: gears(5, 7.5) }, { wheelId: other, riderId });
		await addRide(test, { startedAtMs: START_MS + 9 * HOUR_MS, detail: gears(4.01, 6) }, { riderId });
		expect(answersView(test.ledger, 'wheel').rows[0]).toMatchObject({
			offered: String(wheelId),
			sure: true,
			reason: 'its gears lie 0.1 % from those of Tourer; next Racer, 20.1 %; Wheel A was on that bike then'
		});
	});

	it('offers whoever handed the file in as its rider, unless they hand in for others too', async () => {
		const test = freshLedger();
		withHardware(test);
		await addRide(test);
		expect(answersView(test.ledger, 'rider').rows[0]).toMatchObject({
			offered: String(test.actor.personId),
			reason: 'P1 handed the file in'
		});
		const rider = addPerson(test.ledger, { name: 'Rider', role: 'rider', example: false, code: 'R1' });
		const second = await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS });
		assignRide(test.ledger, test.actor, second, { riderId: rider.id });
		expect(answersView(test.ledger, 'rider').rows[0]).toMatchObject({ offered: null });
	});

	it('offers the wheel, the surface and the meaning of laps as they were in the ride before', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		createWheel(test.ledger, test.actor, { name: 'Wheel B', hub: '' });
		const riderId = test.actor.personId;
		const first = await addRide(test, {}, { wheelId, riderId, lapsMeanSlips: true });
		assignRide(test.ledger, test.actor, first, { surface: 'forest track' });
		const exposure = { cells: [], hours: [], marks: [{ timeS: 600, observed: true }] };
		const next = await addRide(test, { startedAtMs: START_MS + 30 * HOUR_MS, exposure }, { riderId });
		expect(answersView(test.ledger, 'wheel').rows[0]).toMatchObject({
			offered: String(wheelId),
			sure: false
		});
		expect(answersView(test.ledger, 'lapsMeanSlips').rows[0]).toMatchObject({
			offered: 'yes',
			reason: 'so it was in the ride before by P1 (4 May 2026)'
		});
		assignRide(test.ledger, test.actor, next, { wheelId });
		expect(answersView(test.ledger, 'surface').rows[0]).toMatchObject({ offered: 'forest track' });
	});

	it('offers the build fitted nearest in time where none was fitted', async () => {
		const test = freshLedger();
		const wheelId = createWheel(test.ledger, test.actor, { name: 'A', hub: '' });
		const buildId = createBuild(test.ledger, test.actor, { name: 'First', description: '' });
		await addRide(test, {}, { wheelId });
		fitBuild(test.ledger, test.actor, { wheelId, buildId, from: instant(START_MS + 48 * HOUR_MS) });
		expect(answersView(test.ledger, 'build').rows[0]).toMatchObject({
			offered: String(buildId),
			reason: 'First was fitted next, on 6 May 2026'
		});
	});
});

describe('answerRides', () => {
	it('answers many rides in one go and takes them back in one go', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const ids = [await addRide(test), await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS })];
		for (const id of ids) assignRide(test.ledger, test.actor, id, { wheelId: null });
		expect(programmeRows(test.ledger)[0].totalM).toBe(0);
		const given = ids.map((rideId) => ({ rideId, value: String(wheelId) }));
		const batch = answerRides(test.ledger, test.actor, 'wheel', given);
		expect(programmeRows(test.ledger)[0]).toMatchObject({ rides: 2, totalM: 60_000 });
		expect(rideAnswersView(test.ledger, ids[0])!.who.wheelId).toMatchObject({ by: 'P1' });
		expect(undoAnswers(test.ledger, test.actor, batch)).toEqual({ takenBack: 2, stay: 0 });
		expect(programmeRows(test.ledger)[0].totalM).toBe(0);
		expect(() => undoAnswers(test.ledger, test.actor, batch)).toThrow('already');
		expect(answersView(test.ledger, null).batches).toMatchObject([
			{ id: batch, title: 'Which wheel', rides: 2, by: 'P1', undone: { by: 'P1' } }
		]);
	});

	it('changes nothing at all when one of the answers is refused', async () => {
		const test = freshLedger();
		withHardware(test);
		const ids = [await addRide(test), await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS })];
		const before = rowsOf(test.ledger, 'SELECT * FROM ride');
		const answer = (values: string[]) => () =>
			answerRides(
				test.ledger,
				test.actor,
				'surface',
				ids.map((rideId, index) => ({ rideId, value: values[index] }))
			);
		expect(answer(['tarmac', 'cheese'])).toThrow('A surface is one of');
		expect(() => answerRides(test.ledger, test.actor, 'surface', [])).toThrow('Tick at least one');
		expect(() => answerRides(test.ledger, test.actor, 'wet', [{ rideId: 99, value: 'yes' }])).toThrow(
			'no such'
		);
		expect(() => answerRides(test.ledger, test.actor, 'bike', [{ rideId: ids[0], value: '7' }])).toThrow(
			'no such bike'
		);
		expect(() => answerRides(test.ledger, test.actor, 'wet', [{ rideId: ids[0], value: 'damp' }])).toThrow(
			'yes or no'
		);
		expect(rowsOf(test.ledger, 'SELECT * FROM ride')).toEqual(before);
		expect(rowsOf(test.ledger, 'SELECT * FROM answer_batch')).toEqual([]);
	});

	it('refuses what somebody answered meanwhile', async () => {
		const test = freshLedger();
		withHardware(test);
		const ids = [await addRide(test), await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS })];
		assignRide(test.ledger, test.actor, ids[1], { wet: false });
		const given = ids.map((rideId) => ({ rideId, value: 'yes' }));
		expect(() => answerRides(test.ledger, test.actor, 'wet', given)).toThrow('meanwhile');
		expect(rideView(test.ledger, ids[0])!.wet).toBe(null);
	});

	it('leaves what was changed since as it is when answers are taken back', async () => {
		const test = freshLedger();
		withHardware(test);
		const ids = [await addRide(test), await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS })];
		const batch = answerRides(
			test.ledger,
			test.actor,
			'wet',
			ids.map((rideId) => ({ rideId, value: 'yes' }))
		);
		assignRide(test.ledger, test.actor, ids[1], { wet: false });
		expect(undoAnswers(test.ledger, test.actor, batch)).toEqual({ takenBack: 1, stay: 1 });
		expect(ids.map((id) => rideView(test.ledger, id)!.wet)).toEqual([null, false]);
	});

	it('answers laps, and gives the open lap back when that is taken back', async () => {
		const test = freshLedger();
		withHardware(test);
		const exposure = { cells: [], hours: [], marks: [{ timeS: 600, observed: true }] };
		const rideId = await addRide(test, { exposure }, { lapsMeanSlips: true });
		const [row] = answersView(test.ledger, 'laps').rows;
		expect(row).toMatchObject({ key: `${rideId}@600`, lapS: 600 });
		const given = [{ rideId, lapS: 600, value: 'a slip was felt' }];
		const batch = answerRides(test.ledger, test.actor, 'laps', given);
		expect(openOf(test, 'laps')).toBe(0);
		undoAnswers(test.ledger, test.actor, batch);
		expect(openOf(test, 'laps')).toBe(1);
	});

	it('decides copies, and gives the question back', async () => {
		const test = freshLedger();
		withHardware(test);
		await addRide(test);
		const copy = await addRide(test, { format: 'tcx' });
		const batch = answerRides(test.ledger, test.actor, 'twin', [{ rideId: copy, value: 'same recording' }]);
		expect(rideView(test.ledger, copy)!.state).toBe('left out');
		undoAnswers(test.ledger, test.actor, batch);
		expect(rideView(test.ledger, copy)!.state).toBe('needs an answer');
	});
});
