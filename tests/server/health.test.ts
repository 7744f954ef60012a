import Database from 'better-sqlite3';
import { statfsSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { health, LedgerRefusal } from '$lib/server';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { freshLedger, storeSomething } from './testLedger';

vi.mock('node:fs', async (original) => {
	const real = await original<typeof import('node:fs')>();
	return { ...real, statfsSync: vi.fn(real.statfsSync) };
});
const withFree = (bytes: number) =>
	vi.mocked(statfsSync).mockReturnValueOnce({ bavail: bytes, bsize: 1 } as never);

/** what is said of an error that came up while the ledger was read */
function troubleOf(code: string): string | null {
	const { ledger } = freshLedger();
	const database = {
		prepare: () => {
			throw new Database.SqliteError('no', code);
		}
	};
	return health(() => ({ ...ledger, folder: ledger.folder, database: database as never })).trouble;
}

describe('health', () => {
	it('tells what waits and whether somebody may analyse', async () => {
		const test = freshLedger();
		await storeSomething(test);
		expect(health(() => test.ledger)).toMatchObject({
			state: 'open',
			ledgerRead: true,
			trouble: null,
			unfinishedImports: 1,
			runner: true
		});
	});

	it('says that the server lives also when its ledger cannot be read or opened', () => {
		const { ledger } = freshLedger();
		const other = freshLedger().ledger;
		other.database.exec('ALTER TABLE import RENAME TO gone');
		const notRead = {
			state: 'open',
			analysisVersion: ANALYSIS_VERSION,
			ledgerRead: false,
			trouble: 'not-known',
			unfinishedImports: null,
			runner: null,
			ledgerAnalysisVersion: null
		};
		expect(health(() => other)).toEqual(notRead);
		const full = () => {
			throw new Error('the disk is full');
		};
		expect(health(full)).toEqual(notRead);
		expect(health(() => ledger).ledgerRead).toBe(true);
	});

	it('names what keeps the ledger from being read, in one fixed word', () => {
		expect(troubleOf('SQLITE_BUSY')).toBe('ledger-in-use');
		expect(troubleOf('SQLITE_CORRUPT_VTAB')).toBe('ledger-damaged');
		expect(troubleOf('SQLITE_IOERR_SHMSIZE')).toBe('folder-not-writable');
		withFree(1000);
		expect(troubleOf('SQLITE_IOERR_SHMSIZE')).toBe('disk-full');
		withFree(0);
		expect(troubleOf('SQLITE_FULL')).toBe('disk-full');
		expect(troubleOf('SQLITE_ERROR')).toBe('not-known');
		const newer = () => {
			throw new LedgerRefusal('newer-ledger', 'Of a newer program.');
		};
		expect(health(newer).trouble).toBe('newer-ledger');
	});

	it('answers also where the disk does not even say how full it is, or what is thrown is no error', () => {
		vi.mocked(statfsSync).mockImplementationOnce(() => {
			throw new Error('ENODEV');
		});
		expect(troubleOf('SQLITE_IOERR')).toBe('folder-not-writable');
		const odd = () => {
			throw null;
		};
		expect(health(odd)).toMatchObject({ ledgerRead: false, trouble: 'not-known' });
	});
});
