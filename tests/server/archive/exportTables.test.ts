import { createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { open, type Entry } from 'yauzl';
import { describe, expect, it } from 'vitest';
import { exportTables } from '$lib/server';
import { archiveTables, LEFT_OUT } from '$lib/server/archive/archiveTables';
import { freshFolder, freshLedger, START_MS } from '../testLedger';
import { instant, richLedger } from './archiveFixture';

describe('exportTables', () => {
	it('writes each table for a spreadsheet, with instants as text and nothing that would run', async () => {
		const test = await richLedger();
		const path = join(freshFolder(), 'tables.zip');
		await pipeline(exportTables(test.ledger), createWriteStream(path));
		const parts = await csvParts(path);
		expect([...parts.keys()].sort()).toEqual(
			['README.txt', ...archiveTables(test.ledger.database).map(({ name }) => `${name}.csv`)].sort()
		);
		expect(parts.get('build.csv')).toContain(",'=New,");
		expect(parts.get('verdict.csv')).toContain(",'=1+1,");
		const [header, first] = parts.get('ride.csv')!.split('\r\n');
		expect(header.split(',')).toContain('started_utc');
		expect(first).toContain(instant(START_MS));
		expect(parts.get('ride_signature.csv')).toMatch(/^ride_id\r\n1\r\n/);
		expect([...parts.values()].join()).not.toContain('Owner of the test');
		for (const name of Object.keys(LEFT_OUT)) expect(parts.has(`${name}.csv`)).toBe(false);
	});

	it('says of each column what it means, in the words of the layout', async () => {
		const test = freshLedger();
		const path = join(freshFolder(), 'tables.zip');
		await pipeline(exportTables(test.ledger), createWriteStream(path));
		const readme = (await csvParts(path)).get('README.txt')!;
		expect(readme).toContain(
			'exposure_cell\n  What each ride was exposed to, by one version of the analysis.'
		);
		expect(readme).toContain(
			'  torque_from_nm: real; newton metres; NULL = the torque is not known there (never 0)'
		);
		expect(readme).toContain('  started_utc: text; ISO 8601, UTC');
		expect(readme).toContain('  load_kg: real; kilograms; luggage or trailer, without rider and bike');
	});
});

async function csvParts(path: string): Promise<Map<string, string>> {
	return new Promise((resolve, reject) => {
		open(path, { lazyEntries: true }, (error, zip) => {
			if (error) return reject(error);
			const parts = new Map<string, string>();
			zip.on('end', () => resolve(parts));
			zip.on('entry', (entry: Entry) => {
				zip.openReadStream(entry, async (failed, stream) => {
					if (failed) return reject(failed);
					let text = '';
					for await (const piece of stream) text += String(piece);
					parts.set(entry.fileName, text);
					zip.readEntry();
				});
			});
			zip.readEntry();
		});
	});
}
