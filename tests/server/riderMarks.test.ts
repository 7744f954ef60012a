import { describe, expect, it } from 'vitest';
import { answerRiderMark, assignRide, countHeldBack, listRides, recordVerdict, rideView } from '$lib/server';
import type { MarkAnswer, RideHints } from '$lib/server';
import { markedRides } from '$lib/server/marks/markedRides';
import { addRide, freshLedger, rowsOf, slipAt, withHardware, type TestLedger } from './testLedger';

const withMarks = (...timesS: number[]) => ({
	exposure: { cells: [], hours: [], marks: timesS.map((timeS) => ({ timeS, observed: true })) }
});
const events = [slipAt(100), slipAt(500)];

/** A ride with slips at 100 and 500 s and laps at 104 and 900 s, whose rider says that laps mean slips. */
async function marked(test: TestLedger, said: boolean | null = true): Promise<number> {
	withHardware(test);
	return addRide(test, { events, ...withMarks(104, 900) }, { lapsMeanSlips: said });
}
const marksOf = (test: TestLedger, rideId: number) => rideView(test.ledger, rideId)!.riderMarks;

describe('rider marks', () => {
	it('ties a lap to the event before it and leaves the other one open, without holding the ride back', async () => {
		const test = freshLedger();
		const rideId = await marked(test);
		const ride = rideView(test.ledger, rideId)!;
		expect(ride.riderMarks.marks).toEqual([
			{ timeS: 104, observed: true, event: { id: ride.eventList[0].id, delayS: 4 }, answer: null },
			{ timeS: 900, observed: true, event: null, answer: null }
		]);
		expect(ride).toMatchObject({ openMarks: 1, state: 'counted', needs: [] });
		expect(listRides(test.ledger, { page: 1, pageSize: 9, onlyNeeds: true }).total).toBe(1);
		expect(countHeldBack(test.ledger)).toBe(0);
	});

	it('looks at no other ride where one alone has changed', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rideId = await marked(test);
		markedRides(ledger);
		const { database } = ledger;
		const asked: string[] = [];
		const prepare = database.prepare;
		database.prepare = ((sql: string) => {
			if (sql.includes('laps_mean_slips')) asked.push(sql);
			return prepare(sql);
		}) as never;
		const eventId = rideView(ledger, rideId)!.eventList[0].id;
		recordVerdict(ledger, actor, eventId, { verdict: 'confirmed' });
		asked.length = 0;
		markedRides(ledger);
		database.prepare = prepare;
		expect(asked).toHaveLength(4);
		const values = { version: 1, only: JSON.stringify([rideId]) };
		for (const sql of asked)
			for (const { detail } of database
				.prepare<[object], { detail: string }>(`EXPLAIN QUERY PLAN ${sql}`)
				.all(values))
				expect(detail).not.toMatch(/^SCAN (?!json_each)/);
	});

	it('keeps what the rider said at the upload, and takes no other kind of value for it', async () => {
		const test = freshLedger();
		withHardware(test);
		const said = async (lapsMeanSlips: unknown) =>
			marksOf(test, await addRide(test, {}, { lapsMeanSlips } as RideHints)).lapsMeanSlips;
		expect(await said(false)).toBe(false);
		expect(await said('yes')).toBeNull();
		expect(await said(undefined)).toBeNull();
	});

	it('asks nothing and ties nothing while the rider has not said what laps mean, or said otherwise', async () => {
		for (const said of [null, false]) {
			const test = freshLedger();
			const rideId = await marked(test, said);
			const view = marksOf(test, rideId);
			expect(view).toMatchObject({ lapsMeanSlips: said, open: 0, counts: null });
			expect(view.marks.map(({ event }) => event)).toEqual([null, null]);
			assignRide(test.ledger, test.actor, rideId, { lapsMeanSlips: true });
			expect(marksOf(test, rideId)).toMatchObject({ lapsMeanSlips: true, open: 1 });
			assignRide(test.ledger, test.actor, rideId, { lapsMeanSlips: null });
			expect(marksOf(test, rideId).lapsMeanSlips).toBeNull();
		}
	});

	it('counts both, mark only and detection only as people answer and review', async () => {
		const test = freshLedger();
		const rideId = await marked(test);
		expect(marksOf(test, rideId).counts).toEqual({ both: 0, markOnly: 0, detectionOnly: 0, waiting: 3 });
		for (const { id } of rideView(test.ledger, rideId)!.eventList)
			recordVerdict(test.ledger, test.actor, id, { verdict: 'confirmed' });
		answerRiderMark(test.ledger, test.actor, rideId, 900, 'a slip was felt');
		expect(marksOf(test, rideId).counts).toEqual({ both: 1, markOnly: 1, detectionOnly: 1, waiting: 0 });
	});

	it('asks again when the event that a lap was taken to mean is rejected', async () => {
		const test = freshLedger();
		const rideId = await marked(test);
		const [first] = rideView(test.ledger, rideId)!.eventList;
		recordVerdict(test.ledger, test.actor, first.id, { verdict: 'rejected', reason: 'shift' });
		expect(marksOf(test, rideId).open).toBe(2);
		expect(rideView(test.ledger, rideId)!.openMarks).toBe(2);
	});

	it('keeps each answer with its actor and leaves a trail; a later one supersedes it', async () => {
		const test = freshLedger();
		const rideId = await marked(test);
		answerRiderMark(test.ledger, test.actor, rideId, 900, 'something else');
		answerRiderMark(test.ledger, test.actor, rideId, 900, 'a slip was felt');
		expect(marksOf(test, rideId).marks[1].answer).toMatchObject({ answer: 'a slip was felt', by: 'P1' });
		expect(rideView(test.ledger, rideId)!.openMarks).toBe(0);
		answerRiderMark(test.ledger, test.actor, rideId, 900, null);
		expect(marksOf(test, rideId).open).toBe(1);
		expect(rowsOf(test.ledger, 'SELECT answer FROM rider_mark_answer WHERE superseded_ms IS NULL')).toEqual(
			[]
		);
		expect(rowsOf(test.ledger, 'SELECT answer FROM rider_mark_answer')).toHaveLength(2);
		const trail = rowsOf(test.ledger, "SELECT action, detail FROM trail WHERE subject = 'lap' ORDER BY id");
		expect(trail.map(({ action, detail }) => [action, JSON.parse(detail as string).before])).toEqual([
			['answered', null],
			['answered', 'something else'],
			['took the answer back', 'a slip was felt']
		]);
	});

	it('refuses an answer about a lap that the ride does not have, and one of other words', async () => {
		const test = freshLedger();
		const rideId = await marked(test);
		const answer = (timeS: number, said: string) => () =>
			answerRiderMark(test.ledger, test.actor, rideId, timeS, said as MarkAnswer);
		expect(answer(901, 'something else')).toThrow('no such lap');
		expect(answer(900, 'maybe')).toThrow('Say "a slip was felt"');
	});

	it('finds an answer again by its absolute time when another analysis version places the lap within 1 s', async () => {
		const test = freshLedger();
		const rideId = await marked(test);
		answerRiderMark(test.ledger, test.actor, rideId, 900, 'something else');
		const moveLapTo = (timeS: number) =>
			test.ledger.database.prepare('UPDATE rider_mark SET time_s = ? WHERE time_s >= 900').run(timeS);
		moveLapTo(900.9);
		expect(marksOf(test, rideId).open).toBe(0);
		moveLapTo(901.1);
		expect(marksOf(test, rideId).open).toBe(1);
	});
});
