import { statSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { foldLogs } from '$lib/server/ledger/foldLogs';
import { freshLedger } from './testLedger';

const PATIENCE = { timeout: 60_000, interval: 20 };

it('foldLogs brings what was written into both databases, and leaves it to the commits again when it ends', async () => {
	const { ledger } = freshLedger();
	const { database, channels } = ledger;
	const pages = () => database.pragma('wal_autocheckpoint', { simple: true });
	const usual = pages();
	const end = foldLogs(ledger, 20);
	await vi.waitFor(() => expect(pages()).toBeGreaterThan(usual as number), PATIENCE);
	const size = (file: string) => statSync(file).size;
	const before = [size(database.name), size(channels.name)];
	database.exec('CREATE TABLE filling AS SELECT zeroblob(200000) AS bytes');
	channels.exec('CREATE TABLE filling AS SELECT zeroblob(200000) AS bytes');
	await vi.waitFor(() => {
		expect(size(database.name)).toBeGreaterThan(before[0]);
		expect(size(channels.name)).toBeGreaterThan(before[1]);
	}, PATIENCE);
	end();
	await vi.waitFor(() => expect(pages()).toBe(usual), PATIENCE);
	expect(database.prepare('SELECT length(bytes) FROM filling').pluck().get()).toBe(200_000);
}, 120_000);
