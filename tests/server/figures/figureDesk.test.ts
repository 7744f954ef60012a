import { afterEach, describe, expect, it } from 'vitest';
import { computeFigures, figureKey, openLedger, packFigures, recordVerdict, rideView } from '$lib/server';
import { FigureDesk, type FigureWords, type ShowOptions } from '$lib/server/figures/figureDesk';
import type { FigureReader } from '$lib/server/figures/figureReader';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { createFormats } from '$lib/ui/formats';
import {
	addRide,
	freshLedger,
	HOUR_MS,
	slipAt,
	START_MS,
	withHardware,
	type TestLedger
} from '../testLedger';

const WORDS: FigureWords = createFormats('en-GB', 'UTC');
const AT_ONCE: ShowOptions = { mayBeOlder: true, wait: false };
const WAITING: ShowOptions = { mayBeOlder: true, wait: true };
const EXACT: ShowOptions = { mayBeOlder: false, wait: false };
const MANY = 500;

const desks: FigureDesk[] = [];
afterEach(() => desks.splice(0).forEach((desk) => desk.stop()));

/** Computes in this process what the child process would, when the test lets it. */
class OwnReader implements Pick<FigureReader, 'compute' | 'stop'> {
	asked = 0;
	/** resolved before each computation */
	gate: Promise<unknown> = Promise.resolve();
	constructor(private readonly folder: string) {}

	async compute({ kind, asked }: Parameters<FigureReader['compute']>[0]) {
		const requestId = ++this.asked;
		const ledger = openLedger(this.folder, { migrate: false, forReading: true });
		try {
			ledger.database.exec('BEGIN');
			const key = figureKey(ledger);
			const bytes = packFigures(computeFigures(ledger, kind, asked as never, WORDS));
			ledger.database.exec('COMMIT');
			await this.gate;
			return { kind: 'computed' as const, requestId, key, bytes };
		} finally {
			ledger.close();
		}
	}

	stop() {}
}

/** Rides that say nothing, so that the ledger is one of many. */
function addMany({ ledger }: TestLedger): void {
	ledger.database.exec(
		`WITH RECURSIVE n(i) AS (SELECT 1000 UNION ALL SELECT i + 1 FROM n WHERE i < ${999 + MANY})
		INSERT INTO source SELECT printf('%064d', i), 1, 'a.fit', 0, 1 FROM n;
		WITH RECURSIVE n(i) AS (SELECT 1000 UNION ALL SELECT i + 1 FROM n WHERE i < ${999 + MANY})
		INSERT INTO ride (id, sha256, file_name, format, started_ms, duration_s, created_ms)
			SELECT i, printf('%064d', i), 'a.fit', 'fit', i, 60, 0 FROM n;
		INSERT INTO result (ride_id, version, total_m, observed_m, driven_m, computed_ms)
			SELECT id, ${ANALYSIS_VERSION}, 1000, 500, 700, 0 FROM ride WHERE id >= 1000`
	);
}

async function deskOfMany(pauseMs = 60_000) {
	const test = freshLedger();
	withHardware(test);
	const first = await addRide(test, { events: [slipAt(600)] });
	addMany(test);
	const reader = new OwnReader(test.ledger.folder);
	const desk = new FigureDesk(test.ledger, reader, pauseMs);
	desks.push(desk);
	const show = (options: ShowOptions) => desk.show('programme', null, WORDS, options);
	const comesIn = (hour: number) =>
		addRide(test, { startedAtMs: START_MS + hour * HOUR_MS, events: [slipAt(60)] });
	const reject = (rideId: number) =>
		recordVerdict(test.ledger, test.actor, rideView(test.ledger, rideId)!.eventList[0].id, {
			verdict: 'rejected',
			reason: 'shift'
		});
	return { test, first, reader, show, comesIn, reject };
}

const countsOf = ({ figures }: Awaited<ReturnType<Awaited<ReturnType<typeof deskOfMany>>['show']>>) =>
	figures?.builds.map(({ counted }) => [counted.unreviewed, counted.rejected]) ?? null;

describe('FigureDesk', () => {
	it('computes the figures of few rides at once, without the child process', async () => {
		const test = freshLedger();
		withHardware(test);
		await addRide(test, { events: [slipAt(600)] });
		const reader = new OwnReader(test.ledger.folder);
		const shown = await new FigureDesk(test.ledger, reader).show('programme', null, WORDS, AT_ONCE);
		expect([countsOf(shown), shown.since, reader.asked]).toEqual([[[1, 0]], null, 0]);
	});

	it('says first what many rides are computed from, then gives what would be computed here', async () => {
		const { test, show, reader } = await deskOfMany();
		expect(await show(AT_ONCE)).toEqual({ figures: null, since: null, computing: { rides: MANY + 1 } });
		const shown = await show(WAITING);
		expect(shown).toEqual({
			figures: computeFigures(test.ledger, 'programme', null, WORDS),
			since: null,
			computing: null
		});
		expect(await show(AT_ONCE)).toEqual(shown);
		expect(reader.asked).toBe(1);
	});

	it('shows figures that miss rides of the queue at once, says so, and has them computed anew', async () => {
		const { show, comesIn } = await deskOfMany(0);
		await show(WAITING);
		await comesIn(2);
		await comesIn(4);
		const older = await show(AT_ONCE);
		expect([countsOf(older), older.since?.rides]).toEqual([[[1, 0]], 2]);
		await expect.poll(async () => countsOf(await show(AT_ONCE)), { timeout: 20_000 }).toEqual([[3, 0]]);
		expect((await show(AT_ONCE)).since).toBeNull();
	});

	it('does not compute anew after each file while many come in', async () => {
		const { show, comesIn, reader } = await deskOfMany(60_000);
		await show(WAITING);
		for (const hour of [2, 4, 6]) {
			await comesIn(hour);
			expect(countsOf(await show(AT_ONCE))).toEqual([[1, 0]]);
		}
		await new Promise((resolve) => setTimeout(resolve, 50));
		expect(reader.asked).toBe(1);
	});

	it('never shows figures from before a verdict, also when rides came in besides', async () => {
		const { show, comesIn, reject, first } = await deskOfMany();
		await show(WAITING);
		await comesIn(2);
		reject(first);
		expect((await show(AT_ONCE)).figures).toBeNull();
		const shown = await show(WAITING);
		expect([countsOf(shown), shown.since]).toEqual([[[1, 1]], null]);
	});

	it('does not take figures whose computing began before a verdict for those after it', async () => {
		const { show, reject, first, reader } = await deskOfMany();
		let open = () => {};
		reader.gate = new Promise<void>((resolve) => (open = resolve));
		const before = show(WAITING);
		reject(first);
		const after = show(WAITING);
		open();
		expect(countsOf(await before)).toEqual([[1, 0]]);
		expect(countsOf(await after)).toEqual([[0, 1]]);
		expect(countsOf(await show(AT_ONCE))).toEqual([[0, 1]]);
	});

	it('gives what is signed with every ride there is', async () => {
		const { show, comesIn } = await deskOfMany();
		await show(WAITING);
		await comesIn(2);
		expect((await show(EXACT)).figures).toBeNull();
		expect(countsOf(await show({ ...EXACT, wait: true }))).toEqual([[2, 0]]);
	});

	it('tells whoever waits why nothing could be computed, and tries again the next time', async () => {
		const { show, reader } = await deskOfMany();
		reader.gate = Promise.reject(new Error('the process ended'));
		await expect(show(WAITING)).rejects.toThrow('the process ended');
		reader.gate = Promise.resolve();
		expect(countsOf(await show(WAITING))).toEqual([[1, 0]]);
	});
});

describe('figures that were sent from the child process', () => {
	it('are read from their bytes once while they are shown again and again, and anew when they were computed anew', async () => {
		const { show, reject, first } = await deskOfMany();
		const { figures } = await show(WAITING);
		expect((await show(WAITING)).figures).toBe(figures);
		reject(first);
		expect((await show(WAITING)).figures).not.toBe(figures);
	});
});
