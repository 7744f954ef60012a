import Database from 'better-sqlite3';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openLedger, ownRateOf, ownRateWindow, rideChannels, rideView } from '$lib/server';
import { CHANNEL_MIGRATIONS } from '$lib/server/ledger/migrations';
import { migrate } from '$lib/server/ledger/migrate';
import { packChannel } from '../../src/jobs/analysis/packChannel';
import { addRide, analysedFile, freshFolder, freshLedger } from './testLedger';

const RATE = 200;
const values = Float64Array.from({ length: 3600 * RATE }, (_, i) =>
	i % 50_000 < 300 ? NaN : Math.round(80 + 10 * Math.sin(i / 37) + 5 * Math.sin(i / 9001))
);
values[123_456] = 240;
const fast = { ...packChannel('crankRpm', values, 0.1), sampleS: 1 / RATE };

async function ride() {
	const test = freshLedger();
	const rideId = await addRide(test, { channels: [...analysedFile().channels, fast] });
	return { ledger: test.ledger, rideId };
}

describe('ownRateWindow', () => {
	it('gives the values themselves where they fit the pixels', async () => {
		const { ledger, rideId } = await ride();
		const shown = ownRateWindow(ledger, rideId, [615, 620], 1000)!;
		expect([shown.size, shown.sampleS]).toEqual([1, 0.005]);
		expect(shown.fromS).toBeCloseTo(615 - 0.005, 9);
		const first = Math.round(shown.fromS * RATE);
		const [{ low, high }] = shown.lines;
		expect([...high]).toEqual([...Float32Array.from(values.subarray(first, first + shown.count))]);
		expect(low).toEqual(high);
		expect(first + shown.count).toBeGreaterThanOrEqual(620 * RATE);
	});

	it('gives the lowest and highest of each group at every zoom, never more than about two a pixel', async () => {
		const { ledger, rideId } = await ride();
		for (const [from, to] of [
			[0, 3600],
			[500, 1700],
			[600, 660],
			[3590, 3600],
			[617.2, 617.4]
		]) {
			const shown = ownRateWindow(ledger, rideId, [from, to], 800)!;
			expect(shown.count).toBeLessThanOrEqual(2 * 800 + 4);
			// no coarser than a value a pixel, unless there are no more values
			expect(shown.size === 1 || shown.count >= 800).toBe(true);
			const [{ low, high }] = shown.lines;
			const first = Math.round(shown.fromS * RATE);
			for (let group = 0; group < shown.count; group++) {
				const known = values
					.subarray(first + group * shown.size, first + (group + 1) * shown.size)
					.filter((value) => !Number.isNaN(value));
				if (known.length === 0) expect([low[group], high[group]]).toEqual([NaN, NaN]);
				else expect([low[group], high[group]]).toEqual([Math.min(...known), Math.max(...known)]);
			}
		}
	});

	it('answers for a stretch beyond the ride with nothing, and for a ride without such lines with null', async () => {
		const { ledger, rideId } = await ride();
		expect(ownRateWindow(ledger, rideId, [9000, 9100], 800)?.count).toBe(0);
		const test = freshLedger();
		const slow = await addRide(test);
		expect(ownRateWindow(test.ledger, slow, [0, 100], 800)).toBeNull();
		expect(ownRateOf(test.ledger, slow)).toBeNull();
		expect(ownRateOf(test.ledger, 4711)).toBeNull();
		expect(ownRateOf(ledger, rideId)).toEqual({ sampleS: 0.005, names: ['crankRpm'] });
	});

	it('keeps lines at their own rate out of those at one value a second', async () => {
		const { ledger, rideId } = await ride();
		const traces = rideChannels(ledger, rideId)!;
		expect(traces.channels.map(({ name }) => name)).toEqual(['cadenceRpm', 'speedMps']);
		expect(traces.length).toBe(3601);
	});
});

describe('traces that an older program wrote', () => {
	it('are read as one value a second', async () => {
		const folder = freshFolder();
		const before = freshLedger(folder);
		const rideId = await addRide(before);
		const traces = rideChannels(before.ledger, rideId);
		before.ledger.close();
		// the layout as it was: the same rows without the rate
		const file = join(folder, 'channels.sqlite');
		const now = new Database(file);
		const rows = ['channel', 'channel_chunk'].map((table) => now.prepare(`SELECT * FROM ${table}`).all());
		now.exec('DROP TABLE channel_chunk; DROP TABLE channel; PRAGMA user_version = 0');
		now.close();
		migrate(file, CHANNEL_MIGRATIONS.slice(0, 1));
		const old = new Database(file);
		for (const [index, table] of ['channel', 'channel_chunk'].entries())
			for (const row of rows[index] as Record<string, unknown>[]) {
				const names = Object.keys(row).filter((name) => name !== 'sample_s');
				old
					.prepare(
						`INSERT INTO ${table} (${names.join()}) VALUES (${names.map((name) => `@${name}`).join()})`
					)
					.run(row);
			}
		old.close();
		const ledger = openLedger(folder, { migrate: true });
		try {
			expect(rideChannels(ledger, rideId)).toEqual(traces);
			expect(ownRateOf(ledger, rideId)).toBeNull();
			expect(rideView(ledger, rideId)).not.toBeNull();
		} finally {
			ledger.close();
		}
	});
});
