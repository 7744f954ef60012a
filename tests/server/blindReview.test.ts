import { describe, expect, it } from 'vitest';
import {
	actorOf,
	answerReview,
	choosePerson,
	disputes,
	openReviewItem,
	programmeRows,
	reviewFigures,
	reviewLast,
	reviewProgress,
	reviewScene,
	rideView,
	setKnownGood,
	undoReview,
	type Actor,
	type Ledger
} from '$lib/server';
import { evidenceKey } from '$lib/server/ledger/remember';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { reviewProbe } from '$lib/slip/reviewProbe';
import { addRide, freshLedger, rowsOf, slipAt, START_MS, withHardware, type TestLedger } from './testLedger';

const HOUR_MS = 3_600_000;

async function threeSlips() {
	const test = freshLedger();
	const { wheelId } = withHardware(test);
	const rideIds = [
		await addRide(test, { events: [slipAt(100), slipAt(900)] }, { wheelId }),
		await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS, events: [slipAt(300)] }, { wheelId })
	];
	const second = actorOf(choosePerson(test.ledger, 'Bo Nowhere'));
	return { ...test, wheelId, rideIds, second };
}

function decideAll(ledger: Ledger, actor: Actor, answer: 'confirmed' | 'rejected'): string[] {
	const tokens: string[] = [];
	for (let item = openReviewItem(ledger, actor); item; item = openReviewItem(ledger, actor)) {
		tokens.push(item.token);
		answerReview(ledger, actor, item.token, { answer, reason: answer === 'rejected' ? 'shift' : null });
	}
	return tokens;
}

/** A slip put into the first ride, as the later stage of the analysis keeps it. */
function putProbe({ ledger }: TestLedger, rideId: number): void {
	const seconds = new Float64Array(400).fill(80);
	const traces = {
		...{ cadenceRpm: seconds, engagedCadenceRpm: seconds, speedMps: seconds, powerW: seconds },
		...{ hubTorqueNm: seconds, gainedHubDeg: seconds, state: new Uint8Array(400) }
	};
	const probe = reviewProbe({ traces, gears: [] } as never, slipAt(200), 150);
	ledger.database
		.prepare('INSERT INTO insertion_test VALUES (?, ?, 1, 1, 1, 1, 0, NULL, 0)')
		.run(rideId, ANALYSIS_VERSION);
	ledger.database
		.prepare('INSERT INTO review_probe VALUES (?, ?, 0, 150, ?)')
		.run(rideId, ANALYSIS_VERSION, JSON.stringify(probe));
}

const counts = (ledger: Ledger) => {
	const { confirmed, unreviewed, rejected } = programmeRows(ledger)[0].counted;
	return { confirmed, unreviewed, rejected };
};

describe('openReviewItem', () => {
	it('lays every event before a reviewer once, and the same one until it is answered', async () => {
		const { ledger, actor } = await threeSlips();
		const first = openReviewItem(ledger, actor)!;
		expect(openReviewItem(ledger, actor)).toEqual(first);
		expect(reviewProgress(ledger, actor.personId)).toMatchObject({
			firstLooks: 3,
			secondLooks: 0,
			answered: 0
		});
		expect(new Set(decideAll(ledger, actor, 'confirmed')).size).toBe(3);
		expect(counts(ledger)).toEqual({ confirmed: 3, unreviewed: 0, rejected: 0 });
		expect(openReviewItem(ledger, actor)).toBeNull();
	});

	it('brings what was skipped again when the rest is through', async () => {
		const { ledger, actor } = await threeSlips();
		const first = openReviewItem(ledger, actor)!;
		answerReview(ledger, actor, first.token, { answer: 'skipped' });
		const events = [];
		for (let item = openReviewItem(ledger, actor); item; item = openReviewItem(ledger, actor)) {
			events.push(item.eventId);
			answerReview(ledger, actor, item.token, { answer: 'confirmed' });
		}
		expect(events).toHaveLength(3);
		expect(events.at(-1)).toBe(first.eventId);
	});

	it('drops what was decided elsewhere, or withdrawn with its ride, before it was answered', async () => {
		const { ledger, actor, second } = await threeSlips();
		const mine = openReviewItem(ledger, actor)!;
		const theirs = openReviewItem(ledger, second)!;
		answerReview(ledger, second, theirs.token, { answer: 'confirmed' });
		const now = openReviewItem(ledger, actor)!;
		if (mine.eventId === theirs.eventId) expect(now.token).not.toBe(mine.token);
		else expect(now.token).toBe(mine.token);
	});
});

describe('reviewScene', () => {
	it('tells nothing of wheel, build, rider, day or file', async () => {
		const { ledger, actor } = await threeSlips();
		const scene = reviewScene(ledger, openReviewItem(ledger, actor)!)!;
		const told = JSON.stringify(scene);
		for (const secret of ['Wheel A', 'Old', 'ride.fit', '2026', 'P1', String(START_MS)]) {
			expect(told).not.toContain(secret);
		}
		expect(Object.keys(scene)).not.toContain('rideId');
		expect(scene.overrunCrankDeg.value).toBe(120);
		expect(scene.token).toMatch(/^[0-9a-f]{24}$/);
	});

	it('shows a slip that was put in with the same keys and the same seconds as a real one', async () => {
		const test = await threeSlips();
		putProbe(test, test.rideIds[0]);
		const { ledger, actor } = test;
		const real = reviewScene(ledger, openReviewItem(ledger, actor)!)!;
		const put = reviewScene(ledger, {
			...openReviewItem(ledger, actor)!,
			...{ purpose: 'put in', rideId: test.rideIds[0], eventId: null, probe: 0, putCrankDeg: 150 }
		})!;
		expect(Object.keys(put)).toEqual(Object.keys(real));
		expect(Object.keys(put.traces!)).toEqual(Object.keys(real.traces!));
		expect([put.fromS, put.traces!.cadenceRpm.length]).toEqual([real.fromS, real.traces!.cadenceRpm.length]);
		expect(JSON.stringify(put)).not.toContain('putCrankDeg');
	});
});

describe('answerReview', () => {
	it('keeps a first look as the verdict of the event, with its reason', async () => {
		const { ledger, actor } = await threeSlips();
		const item = openReviewItem(ledger, actor)!;
		answerReview(ledger, actor, item.token, { answer: 'rejected', reason: 'chain', note: ' worn ' });
		const event = rideView(ledger, item.rideId)!.eventList.find(({ id }) => id === item.eventId)!;
		expect(event.verdict).toMatchObject({ verdict: 'rejected', reason: 'chain', note: 'worn', by: 'P1' });
		expect(reviewLast(ledger, actor, item.token)).toMatchObject({ wheel: 'Wheel A', build: 'Old' });
	});

	it('refuses a rejection without a reason, a second answer and what another was shown', async () => {
		const { ledger, actor, second } = await threeSlips();
		const { token } = openReviewItem(ledger, actor)!;
		const answer = (by: Actor, given: Parameters<typeof answerReview>[3]) => () =>
			answerReview(ledger, by, token, given);
		expect(answer(actor, { answer: 'rejected' })).toThrow(expect.objectContaining({ code: 'wrong-value' }));
		expect(answer(second, { answer: 'confirmed' })).toThrow(expect.objectContaining({ code: 'not-found' }));
		answer(actor, { answer: 'confirmed' })();
		expect(answer(actor, { answer: 'confirmed' })).toThrow(expect.objectContaining({ code: 'conflict' }));
		expect(rowsOf(ledger, 'SELECT id FROM verdict')).toHaveLength(1);
	});

	it('leaves the verdict where a second look agrees', async () => {
		const { ledger, actor, second } = await threeSlips();
		decideAll(ledger, actor, 'confirmed');
		decideAll(ledger, second, 'confirmed');
		expect(counts(ledger)).toEqual({ confirmed: 3, unreviewed: 0, rejected: 0 });
		expect(disputes(ledger)).toEqual([]);
		expect(reviewFigures(ledger).find(({ code }) => code === 'P2')).toMatchObject({
			secondLooks: 3,
			disagreed: 0
		});
	});

	it('sets a verdict aside where a second look disagrees: the event counts as not reviewed and is in dispute', async () => {
		const { ledger, actor, second, rideIds } = await threeSlips();
		decideAll(ledger, actor, 'confirmed');
		const [token] = decideAll(ledger, second, 'rejected');
		expect(counts(ledger)).toEqual({ confirmed: 0, unreviewed: 3, rejected: 0 });
		expect(disputes(ledger)).toHaveLength(3);
		expect(disputes(ledger, rideIds[1])).toMatchObject([
			{
				first: { by: 'P1', verdict: 'confirmed' },
				second: { by: 'P2', verdict: 'rejected', reason: 'shift' }
			}
		]);
		// nobody is asked blind again
		expect(openReviewItem(ledger, actor)).toBeNull();
		expect(openReviewItem(ledger, second)).toBeNull();
		undoReview(ledger, second, token);
		expect(counts(ledger)).toEqual({ confirmed: 1, unreviewed: 2, rejected: 0 });
		expect(openReviewItem(ledger, second)!.token).toBe(token);
	});
});

describe('what measures the review', () => {
	it('is mixed in, changes no figure of a build, and counts for the reviewer', async () => {
		const test = await threeSlips();
		const { ledger, actor } = test;
		putProbe(test, test.rideIds[0]);
		ledger.database.prepare("INSERT INTO setting (name, value) VALUES ('oneProbeIn', '2')").run();
		let shown = null;
		for (let item = openReviewItem(ledger, actor); item; item = openReviewItem(ledger, actor)) {
			if (item.purpose === 'put in') {
				const before = [evidenceKey(ledger), JSON.stringify(programmeRows(ledger))];
				answerReview(ledger, actor, item.token, { answer: 'confirmed' });
				expect([evidenceKey(ledger), JSON.stringify(programmeRows(ledger))]).toEqual(before);
				shown = item;
				break;
			}
			answerReview(ledger, actor, item.token, { answer: 'skipped' });
			if (rowsOf(ledger, 'SELECT id FROM review_item').length > 60) break;
		}
		expect(shown).toMatchObject({ putCrankDeg: 150, eventId: null });
		expect(reviewFigures(ledger)).toMatchObject([
			{ decided: 0, putIn: { right: 1, shown: 1 }, knownGood: { shown: 0 } }
		]);
		expect(reviewLast(ledger, actor, shown!.token)).toMatchObject({ purpose: 'put in', putCrankDeg: 150 });
	});

	it('counts rejections on wheels that are known to be good, with exact limits', async () => {
		const { ledger, actor, wheelId } = await threeSlips();
		setKnownGood(ledger, actor, wheelId, true);
		decideAll(ledger, actor, 'rejected');
		const [{ knownGood }] = reviewFigures(ledger);
		expect(knownGood).toMatchObject({ right: 3, shown: 3, upper: 1 });
		// Clopper and Pearson 1934: lower limit of 3 of 3 is 0.025^(1/3)
		expect(knownGood.lower).toBeCloseTo(0.025 ** (1 / 3), 10);
	});

	it('takes an answer back and lays the same thing before the reviewer again', async () => {
		const { ledger, actor } = await threeSlips();
		const { token } = openReviewItem(ledger, actor)!;
		answerReview(ledger, actor, token, { answer: 'confirmed' });
		openReviewItem(ledger, actor);
		undoReview(ledger, actor, token);
		expect(counts(ledger)).toEqual({ confirmed: 0, unreviewed: 3, rejected: 0 });
		expect(openReviewItem(ledger, actor)!.token).toBe(token);
	});
});
