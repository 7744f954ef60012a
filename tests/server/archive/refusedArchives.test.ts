import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { restoreArchive } from '$lib/server';
import { freshFolder, freshLedger, rowsOf, withHardware } from '../testLedger';
import { changed, emptyLedger, exported, hashOf, richLedger } from './archiveFixture';

let rich: Buffer;
let small: Buffer;

/** Made once: the archives are changed as copies. */
beforeAll(async () => {
	rich = readFileSync(await exported(await richLedger(), { sources: true }));
	const test = freshLedger();
	withHardware(test);
	small = readFileSync(await exported(test));
}, 30_000);

function copyOf(archive: Buffer): string {
	const path = join(freshFolder(), 'copy.zip');
	writeFileSync(path, archive);
	return path;
}

describe('restoreArchive', () => {
	it('refuses a ledger that is not empty, and changes nothing there', async () => {
		const path = copyOf(rich);
		const other = freshLedger();
		const before = rowsOf(other.ledger, 'SELECT * FROM person');
		await expect(restoreArchive(other.ledger, path)).rejects.toMatchObject({ code: 'conflict' });
		expect(rowsOf(other.ledger, 'SELECT * FROM person')).toEqual(before);
		expect(readdirSync(join(other.ledger.folder, 'sources'))).toEqual([]);
	});

	const rewriteManifest = (
		parts: Map<string, Buffer>,
		change: (manifest: Record<string, unknown>) => void
	) => {
		const manifest = JSON.parse(parts.get('manifest.json')!.toString()) as Record<string, unknown>;
		change(manifest);
		parts.set('manifest.json', Buffer.from(JSON.stringify(manifest)));
	};
	const swap = (parts: Map<string, Buffer>, name: string, from: string, to: string) =>
		parts.set(name, Buffer.from(parts.get(name)!.toString().replace(from, to)));

	it.each([
		[
			'a newer layout',
			'newer-ledger',
			(parts: Map<string, Buffer>) => rewriteManifest(parts, (m) => (m.layout = 9999))
		],
		[
			'a newer format',
			'newer-ledger',
			(parts: Map<string, Buffer>) => rewriteManifest(parts, (m) => (m.formatVersion = 2))
		],
		[
			'another format',
			'wrong-value',
			(parts: Map<string, Buffer>) => rewriteManifest(parts, (m) => (m.format = 'x'))
		],
		[
			'a manifest that is none',
			'wrong-value',
			(parts: Map<string, Buffer>) => parts.set('manifest.json', Buffer.from('['))
		],
		[
			'a changed table',
			'incomplete',
			(parts: Map<string, Buffer>) => swap(parts, 'tables/wheel.json', 'Wheel A', 'Wheel B')
		],
		[
			'a table cut off',
			'incomplete',
			(parts: Map<string, Buffer>) =>
				parts.set('tables/wheel.json', parts.get('tables/wheel.json')!.subarray(0, 40))
		],
		['a missing table', 'wrong-value', (parts: Map<string, Buffer>) => parts.delete('tables/wheel.json')],
		[
			'a missing source',
			'wrong-value',
			(parts: Map<string, Buffer>) =>
				parts.delete([...parts.keys()].find((name) => name.startsWith('sources/'))!)
		],
		[
			'a changed source',
			'incomplete',
			(parts: Map<string, Buffer>) =>
				parts.set(
					[...parts.keys()].find((name) => name.startsWith('sources/'))!,
					Buffer.from('other')
				)
		],
		[
			'a row that breaks a rule, however well it is hashed',
			'wrong-value',
			(parts: Map<string, Buffer>) => {
				swap(parts, 'tables/build.json', '"state":"draft"', '"state":"flying"');
				const content = parts.get('tables/build.json')!;
				rewriteManifest(parts, (manifest) => {
					const table = (manifest.tables as { name: string; sha256: string; bytes: number }[]).find(
						({ name }) => name === 'build'
					)!;
					Object.assign(table, { sha256: hashOf(content), bytes: content.length });
				});
			}
		],
		[
			'a row that refers to nothing',
			'wrong-value',
			(parts: Map<string, Buffer>) => {
				swap(parts, 'tables/fitted_period.json', '"wheel_id":1', '"wheel_id":777');
				const content = parts.get('tables/fitted_period.json')!;
				rewriteManifest(parts, (manifest) => {
					const table = (manifest.tables as { name: string; sha256: string; bytes: number }[]).find(
						({ name }) => name === 'fitted_period'
					)!;
					Object.assign(table, { sha256: hashOf(content), bytes: content.length });
				});
			}
		]
	])('refuses %s and leaves the ledger empty', async (_what, code, change) => {
		const path = await changed(copyOf(rich), change);
		const other = { ledger: emptyLedger() };
		await expect(restoreArchive(other.ledger, path)).rejects.toMatchObject({ code });
		expect(
			rowsOf(other.ledger, 'SELECT 1 FROM ride UNION ALL SELECT 1 FROM person UNION ALL SELECT 1 FROM wheel')
		).toEqual([]);
		const left = readdirSync(join(other.ledger.folder, 'sources'), { recursive: true }) as string[];
		expect(left.filter((name) => name.length > 3)).toEqual([]);
		expect(readdirSync(join(other.ledger.folder, 'incoming'))).toEqual([]);
	});

	it.each([
		['../../escaped.txt'],
		['/etc/escaped.txt'],
		['tables/../../escaped.json'],
		['sources/ab/escaped'],
		['other.txt'],
		['tables\\wheel.json']
	])('refuses a part called %s', async (name) => {
		// the zip library does not write such names: one of the same length is changed in the bytes
		const marker = 'x'.repeat(name.length);
		const path = await changed(copyOf(small), () => {}, [[marker, Buffer.from('x')]]);
		const bytes = readFileSync(path);
		let at = bytes.indexOf(marker);
		expect(at).toBeGreaterThan(0);
		for (; at >= 0; at = bytes.indexOf(marker, at + 1)) bytes.write(name, at, 'latin1');
		writeFileSync(path, bytes);
		const other = { ledger: emptyLedger() };
		await expect(restoreArchive(other.ledger, path)).rejects.toMatchObject({ code: 'wrong-value' });
		expect(existsSync(join(other.ledger.folder, '..', 'escaped.txt'))).toBe(false);
	});

	it('refuses a file that would unpack to far more than a ledger does', async () => {
		const path = await changed(copyOf(small), (parts) =>
			parts.set('tables/wheel.json', Buffer.alloc(64 * 2 ** 20, 32))
		);
		const other = { ledger: emptyLedger() };
		await expect(restoreArchive(other.ledger, path)).rejects.toMatchObject({ code: 'too-large' });
	});

	it('refuses a part that unpacks to more than it says', async () => {
		const path = await changed(copyOf(small), (parts) =>
			parts.set('tables/wheel.json', Buffer.alloc(5_000_000, 32))
		);
		const bytes = readFileSync(path);
		const size = Buffer.alloc(4);
		size.writeUInt32LE(5_000_000);
		const less = Buffer.alloc(4);
		less.writeUInt32LE(1000);
		for (let at = bytes.indexOf(size); at >= 0; at = bytes.indexOf(size, at + 1)) less.copy(bytes, at);
		writeFileSync(path, bytes);
		const other = { ledger: emptyLedger() };
		await expect(restoreArchive(other.ledger, path)).rejects.toMatchObject({ code: 'wrong-value' });
	});

	it('refuses what is no zip file, and one that is not there', async () => {
		const other = { ledger: emptyLedger() };
		const path = join(freshFolder(), 'no.zip');
		writeFileSync(path, 'no zip at all, but long enough to be looked at as one');
		await expect(restoreArchive(other.ledger, path)).rejects.toMatchObject({ code: 'wrong-value' });
		await expect(restoreArchive(other.ledger, `${path}.not`)).rejects.toMatchObject({ code: 'not-found' });
	});
});
