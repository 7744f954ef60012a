import { open, type FileHandle } from 'node:fs/promises';
import { beforeEach, expect, it, vi } from 'vitest';
import { syncLog } from '$lib/server/ledger/syncLog';
import { writeBeside } from '$lib/server/ledger/writeBeside';
import { freshLedger } from './testLedger';

vi.mock('node:fs/promises', async (original) => {
	const real = await original<typeof import('node:fs/promises')>();
	return { ...real, open: vi.fn(real.open) };
});

/** ends the wait for the disk of each sync that has begun, in order */
let ends: ((error?: Error) => void)[] = [];
const closed = vi.fn(async () => {});
beforeEach(() => {
	ends = [];
	closed.mockClear();
	vi.mocked(open).mockImplementation(
		async () =>
			({
				datasync: () =>
					new Promise<void>((resolve, reject) => ends.push((error) => (error ? reject(error) : resolve()))),
				close: closed
			}) as unknown as FileHandle
	);
});
const begun = (syncs: number) => vi.waitFor(() => expect(ends).toHaveLength(syncs), { timeout: 30_000 });

it('waits for the disk once for all who ask together', async () => {
	const { ledger } = freshLedger();
	const all = Promise.all(Array.from({ length: 50 }, () => syncLog(ledger)));
	await begun(1);
	ends[0]();
	await all;
	expect(ends).toHaveLength(1);
	expect(closed).toHaveBeenCalledTimes(1);
	expect(open).toHaveBeenLastCalledWith(expect.stringMatching(/ledger\.sqlite-wal$/), 'r+');
});

it('waits for the next one where a sync has begun that may have missed what was written since', async () => {
	const { ledger } = freshLedger();
	const first = syncLog(ledger);
	await begun(1);
	let isDone = false;
	const late = Promise.all([syncLog(ledger), syncLog(ledger)]).then(() => (isDone = true));
	ends[0]();
	await first;
	await begun(2);
	expect(isDone).toBe(false);
	ends[1]();
	await late;
	expect(ends).toHaveLength(2);
});

it('fails for those whose sync failed, and not for the next', async () => {
	const { ledger } = freshLedger();
	const first = syncLog(ledger);
	await begun(1);
	const second = syncLog(ledger);
	ends[0](new Error('the disk is gone'));
	await expect(first).rejects.toThrow('the disk is gone');
	await begun(2);
	ends[1]();
	await second;
});

it('writeBeside gives the result back when the disk has it, and what was written is there at once', async () => {
	const { ledger } = freshLedger();
	const count = () => ledger.database.prepare('SELECT count(*) FROM person').pluck().get() as number;
	const before = count();
	let isDone = false;
	const written = writeBeside(ledger, () =>
		ledger.database
			.prepare("INSERT INTO person (name, code, role, example, created_ms) VALUES ('A', 'Z9', 'rider', 0, 0)")
			.run()
	);
	void written.then(() => (isDone = true));
	await begun(1);
	expect(count()).toBe(before + 1);
	expect(isDone).toBe(false);
	ends[0]();
	expect((await written).changes).toBe(1);
});
