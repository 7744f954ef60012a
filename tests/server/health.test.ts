import { describe, expect, it } from 'vitest';
import { health } from '$lib/server';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { freshLedger, storeSomething } from './testLedger';

describe('health', () => {
	it('tells what waits and whether somebody may analyse', async () => {
		const test = freshLedger();
		await storeSomething(test);
		expect(health(() => test.ledger)).toMatchObject({
			state: 'open',
			ledgerRead: true,
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
});
