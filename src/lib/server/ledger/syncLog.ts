import { open } from 'node:fs/promises';
import { join } from 'node:path';
import type { Ledger } from './openLedger';

interface Waits {
	/** a sync that may have begun before what is asked for now was written */
	running: Promise<void>;
	/** the one after it, which everybody who asks meanwhile shares */
	next: Promise<void> | null;
}

const waits = new WeakMap<Ledger, Waits>();

/**
 * Waits until the disk has all that was written to the ledger until now, without holding up anybody else: the log is
 * synced outside the event loop, once for all who wait. With `writeUnsynced` before it this is as safe as a write that
 * waits for the disk itself: who is answered afterwards can rely on it.
 */
export function syncLog(ledger: Ledger): Promise<void> {
	const known = waits.get(ledger);
	if (known?.next) return known.next;
	const own = (known?.running ?? Promise.resolve())
		.catch(() => {})
		.then(() => {
			const begun = sync(ledger);
			waits.set(ledger, { running: begun, next: null });
			return begun;
		});
	waits.set(ledger, { running: known?.running ?? Promise.resolve(), next: own });
	return own;
}

async function sync(ledger: Ledger): Promise<void> {
	const log = await open(join(ledger.folder, 'ledger.sqlite-wal'), 'r+').catch((error) => {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
		throw error;
	});
	// who took the log away wrote what was in it into the ledger and waited for the disk
	if (!log) return;
	try {
		await log.datasync();
	} finally {
		await log.close();
	}
}
