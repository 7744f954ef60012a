import { describe, expect, it } from 'vitest';
import { programmeRows, recordVerdict, rideView, undoVerdict } from '$lib/server';
import { matchVerdicts } from '$lib/server/review/matchVerdicts';
import { addRide, freshLedger, rowsOf, slipAt, withHardware } from './testLedger';

async function ledgerWithSlip() {
	const test = freshLedger();
	withHardware(test);
	const rideId = await addRide(test, { events: [slipAt(100)] });
	const eventId = rideView(test.ledger, rideId)!.eventList[0].id;
	return { ...test, rideId, eventId };
}

describe('recordVerdict and undoVerdict', () => {
	it('confirm an event with who, when and what for', async () => {
		const { ledger, actor, rideId, eventId, clock } = await ledgerWithSlip();
		recordVerdict(ledger, actor, eventId, { verdict: 'confirmed', note: ' felt it ' });
		expect(rideView(ledger, rideId)!.eventList[0].verdict).toEqual({
			id: 1,
			verdict: 'confirmed',
			reason: null,
			note: 'felt it',
			by: 'P1',
			at: new Date(clock.ms).toISOString()
		});
	});

	it('move the counts of the build at once, in both directions', async () => {
		const { ledger, actor, eventId } = await ledgerWithSlip();
		const counts = () => {
			const { confirmed, unreviewed, rejected, bestCase, worstCase } = programmeRows(ledger)[0].counted;
			return [confirmed, unreviewed, rejected, bestCase.count, worstCase.count];
		};
		expect(counts()).toEqual([0, 1, 0, 0, 1]);
		recordVerdict(ledger, actor, eventId, { verdict: 'confirmed' });
		expect(counts()).toEqual([1, 0, 0, 1, 1]);
		recordVerdict(ledger, actor, eventId, { verdict: 'rejected', reason: 'shift' });
		expect(counts()).toEqual([0, 0, 1, 0, 0]);
		undoVerdict(ledger, actor, eventId);
		expect(counts()).toEqual([0, 1, 0, 0, 1]);
	});

	it('do not replace a verdict that was given after the page was shown, and say whose it is', async () => {
		const { ledger, actor, rideId, eventId } = await ledgerWithSlip();
		const standing = () => rideView(ledger, rideId)!.eventList[0].verdict;
		recordVerdict(ledger, actor, eventId, { verdict: 'confirmed' }, { rideId, verdictId: null });
		const first = standing()!;
		const late = () =>
			recordVerdict(
				ledger,
				actor,
				eventId,
				{ verdict: 'rejected', reason: 'shift' },
				{ rideId, verdictId: null }
			);
		expect(late).toThrow(expect.objectContaining({ code: 'conflict' }));
		expect(late).toThrow(/^P1 has confirmed this event meanwhile, on \d+ \w+ 2026, \d\d:\d\d/);
		expect(standing()).toEqual(first);
		expect(rowsOf(ledger, 'SELECT id FROM verdict')).toHaveLength(1);
		undoVerdict(ledger, actor, eventId, { verdictId: first.id });
		expect(() => undoVerdict(ledger, actor, eventId, { verdictId: first.id })).toThrow(
			'taken back meanwhile'
		);
	});

	it('refuse an event of another ride than the page is about', async () => {
		const { ledger, actor, rideId, eventId } = await ledgerWithSlip();
		const wrong = { rideId: rideId + 1 };
		expect(() => recordVerdict(ledger, actor, eventId, { verdict: 'confirmed' }, wrong)).toThrow(
			expect.objectContaining({ code: 'not-found' })
		);
		expect(() => undoVerdict(ledger, actor, eventId, wrong)).toThrow('no such event');
		expect(rideView(ledger, rideId)!.eventList[0].verdict).toBeNull();
	});

	it('keep every earlier verdict and leave a trail', async () => {
		const { ledger, actor, eventId } = await ledgerWithSlip();
		recordVerdict(ledger, actor, eventId, { verdict: 'confirmed' });
		recordVerdict(ledger, actor, eventId, { verdict: 'rejected', reason: 'sensor' });
		undoVerdict(ledger, actor, eventId);
		undoVerdict(ledger, actor, eventId);
		expect(rowsOf(ledger, 'SELECT verdict, superseded_ms IS NOT NULL AS old FROM verdict')).toEqual([
			{ verdict: 'confirmed', old: 1 },
			{ verdict: 'rejected', old: 1 }
		]);
		expect(
			rowsOf(ledger, "SELECT action FROM trail WHERE subject = 'event'").map((row) => row.action)
		).toEqual(['confirmed', 'rejected', 'took the verdict back']);
	});

	it('hold the absolute time and the overrun that was judged', async () => {
		const { ledger, actor, rideId, eventId } = await ledgerWithSlip();
		recordVerdict(ledger, actor, eventId, { verdict: 'confirmed' });
		const startMs = Date.parse(rideView(ledger, rideId)!.startedAt) + 100_000;
		expect(rowsOf(ledger, 'SELECT start_ms, end_ms, overrun_crank_deg FROM verdict')).toEqual([
			{ start_ms: startMs, end_ms: startMs + 2000, overrun_crank_deg: 120 }
		]);
	});

	it('need a reason for a rejection, and an event', async () => {
		const { ledger, actor, eventId } = await ledgerWithSlip();
		expect(() => recordVerdict(ledger, actor, eventId, { verdict: 'rejected' })).toThrow('what it was');
		expect(() => recordVerdict(ledger, actor, 999, { verdict: 'confirmed' })).toThrow('no such event');
		expect(rowsOf(ledger, 'SELECT 1 FROM verdict')).toEqual([]);
	});
});

describe('matchVerdicts', () => {
	const at = (id: number, startMs: number, endMs = startMs + 2000) => ({ id, startMs, endMs });

	it('finds an event again that begins a little earlier or later', () => {
		expect(matchVerdicts([at(1, 12_500)], [at(9, 10_000)])).toEqual(new Map([[1, 9]]));
		expect(matchVerdicts([at(1, 7_000)], [at(9, 10_000)])).toEqual(new Map([[1, 9]]));
	});

	it('gives a verdict to no event that is elsewhere', () => {
		expect(matchVerdicts([at(1, 16_000)], [at(9, 10_000)]).size).toBe(0);
	});

	it('gives each of two near events its own verdict, the nearest first', () => {
		const events = [at(1, 10_000), at(2, 12_000)];
		expect(matchVerdicts(events, [at(8, 12_100), at(9, 10_100)])).toEqual(
			new Map([
				[1, 9],
				[2, 8]
			])
		);
	});

	it('gives one verdict to one event only when an event was split in two', () => {
		expect(matchVerdicts([at(1, 10_000), at(2, 11_000)], [at(9, 10_900, 14_000)])).toEqual(new Map([[2, 9]]));
	});
});
