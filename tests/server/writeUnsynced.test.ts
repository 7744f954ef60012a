import { expect, it } from 'vitest';
import { writeUnsynced } from '$lib/server/ledger/writeUnsynced';
import { freshLedger } from './testLedger';

const NORMAL = 1;
const FULL = 2;

it('writeUnsynced does not wait for the disk, and what comes after it does again, whatever happens', () => {
	const { ledger } = freshLedger();
	const synchronous = () => ledger.database.pragma('synchronous', { simple: true });
	expect(synchronous()).toBe(FULL);
	expect(writeUnsynced(ledger, synchronous)).toBe(NORMAL);
	expect(synchronous()).toBe(FULL);
	const fails = () => {
		throw new Error('no such row');
	};
	expect(() => writeUnsynced(ledger, fails)).toThrow('no such row');
	expect(synchronous()).toBe(FULL);
});

it('writeUnsynced leaves a transaction that is under way as it is', () => {
	const { ledger } = freshLedger();
	const within = () => writeUnsynced(ledger, () => ledger.database.pragma('synchronous', { simple: true }));
	expect(ledger.database.transaction(within)()).toBe(FULL);
});
