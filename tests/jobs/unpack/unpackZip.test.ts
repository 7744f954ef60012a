import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { MemberFacts, MemberOutcome, UnpackLimits } from '../../../src/jobs/unpack/messages';
import { unpackZip } from '../../../src/jobs/unpack/unpackZip';
import { zipBytes, type TestMember } from './zipBytes';

const LIMITS: UnpackLimits = { members: 100, totalBytes: 1e8, memberBytes: 1e7, ratio: 200, depth: 8 };
const CSV = 'time_s,crank_rpm,wheel_rpm\n0,80,240\n0.01,80,240\n';

let folder: string;
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-unpack-'));
	mkdirSync(join(folder, 'out'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

interface Seen extends MemberFacts {
	outcome: MemberOutcome;
}

async function unpack(bytes: Uint8Array, limits: Partial<UnpackLimits> = {}, recorded: number[] = []) {
	const path = join(folder, 'archive');
	writeFileSync(path, bytes);
	const seen: Seen[] = [];
	const refusal = await unpackZip(
		{ kind: 'unpack', path, into: join(folder, 'out', 'm-'), limits: { ...LIMITS, ...limits }, recorded },
		{
			begun: () => {},
			member: async (facts, outcome) => void seen.push({ ...facts, outcome })
		}
	);
	return { refusal, seen, written: readdirSync(join(folder, 'out')).sort() };
}

/** what became of a lone file */
async function one(member: Partial<TestMember>, limits: Partial<UnpackLimits> = {}) {
	const { refusal, seen, written } = await unpack(
		zipBytes([{ name: 'ride.csv', content: CSV, ...member }]),
		limits
	);
	const outcome = seen[0]?.outcome;
	const code = outcome?.kind === 'refused' ? outcome.refusal.code : (refusal?.code ?? outcome?.kind);
	return { code, name: seen[0]?.name, written };
}

describe('unpackZip', () => {
	it('writes each ride file, packed or stored or in gzip, byte for byte with its hash, and passes folders over', async () => {
		const rides = [
			{ name: 'a.csv', content: CSV },
			{ name: 'spring/', content: '', stored: true },
			{ name: 'spring/b.csv', content: CSV + '0.02,80,240\n', stored: true },
			{ name: 'c.fit.gz', content: gzipSync('whatever it is') }
		];
		const { refusal, seen, written } = await unpack(zipBytes(rides));
		expect(refusal).toBeNull();
		expect(seen.map(({ member, name }) => [member, name])).toEqual([
			[0, 'a.csv'],
			[2, 'spring/b.csv'],
			[3, 'c.fit.gz']
		]);
		expect(written).toEqual(['m-0', 'm-2', 'm-3']);
		for (const { member, outcome } of seen) {
			const content = readFileSync(join(folder, 'out', `m-${member}`));
			expect(content.equals(Buffer.from(rides[member].content as string))).toBe(true);
			expect(outcome).toMatchObject({
				kind: 'written',
				bytes: content.length,
				sha256: createHash('sha256').update(content).digest('hex')
			});
		}
	});

	it('goes on behind what is recorded already', async () => {
		const archive = zipBytes([0, 1, 2].map((i) => ({ name: `${i}.csv`, content: CSV + i })));
		const { seen, written } = await unpack(archive, {}, [0, 1]);
		expect(seen.map(({ member }) => member)).toEqual([2]);
		expect(written).toEqual(['m-2']);
	});

	it('tells rides from other files by their first bytes, or takes their word', async () => {
		const { seen } = await unpack(
			zipBytes([
				{ name: 'no ending', content: CSV },
				{ name: 'photo.jpg', content: 'no ride' },
				{ name: 'broken.fit', content: 'no ride either' },
				{ name: '.DS_Store', content: 'x' },
				{ name: '__MACOSX/._a.fit', content: 'x' },
				{ name: 'backup.tar.gz', content: gzipSync('x') }
			])
		);
		expect(seen.map(({ outcome }) => outcome.kind)).toEqual([
			'written',
			'left out',
			'written',
			'left out',
			'left out',
			'left out'
		]);
	});

	it.each([
		['UTF-8 that says so', Buffer.from('Fahrt über Łódź.csv'), 0x800, 'Fahrt über Łódź.csv'],
		['UTF-8 that does not say so', Buffer.from('Fahrt über Łódź.csv'), 0, 'Fahrt über Łódź.csv'],
		['code page 437', Buffer.from([0x66, 0x81, 0x72, 0x2e, 0x63, 0x73, 0x76]), 0, 'für.csv'],
		['folders as one system writes them', Buffer.from('a\\b\\c.csv'), 0, 'a/b/c.csv'],
		['emoji and right-to-left', Buffer.from('🚲 \u202Efit.csv'), 0x800, '🚲 \u202Efit.csv']
	])('reads names in %s', async (_, name, flags, expected) => {
		expect(await one({ name, flags })).toMatchObject({ code: 'written', name: expected });
	});

	it('reads sizes and places of large archives (zip64)', async () => {
		expect(await one({ large: true })).toMatchObject({ code: 'written', written: ['m-0'] });
	});

	it.each<[string, Partial<TestMember>, string]>([
		['upwards', { name: '../../etc/ride.csv' }, 'member-name'],
		['upwards with backslashes', { name: '..\\ride.csv' }, 'member-name'],
		['absolute', { name: '/etc/ride.csv' }, 'member-name'],
		['on a drive', { name: 'C:/ride.csv' }, 'member-name'],
		['with a zero in it', { name: 'ride\0.csv' }, 'member-name'],
		['a link', { mode: 0o120777, content: '/etc/passwd' }, 'member-no-file'],
		['a device', { mode: 0o060644 }, 'member-no-file'],
		['locked', { flags: 1 }, 'member-locked'],
		['packed otherwise', { method: 12 }, 'member-packing'],
		[
			'an archive within',
			{ name: 'more.zip', content: zipBytes([{ name: 'a', content: 'b' }]) },
			'member-archive'
		],
		['of another checksum', { statedCrc: 1 }, 'member-damaged'],
		['longer than it says', { statedBytes: 10 }, 'member-damaged'],
		['shorter than it says', { statedBytes: 10_000 }, 'member-damaged'],
		['stored, of another length', { stored: true, statedBytes: 10 }, 'member-damaged'],
		['with a wrong place in the archive', { statedOffset: 3, statedPackedBytes: 4 }, 'member-damaged'],
		['longer than the archive', { statedPackedBytes: 1e6 }, 'member-damaged']
	])('refuses a file that is %s, and leaves nothing of it', async (_, member, code) => {
		expect(await one(member)).toMatchObject({ code, written: [] });
	});

	it('refuses what unpacks to far more than it is, and a file or an archive over its limit', async () => {
		const zeros = { name: 'zeros.csv', content: Buffer.alloc(3 * 2 ** 20) };
		expect(await one(zeros)).toMatchObject({ code: 'member-expands', written: [] });
		expect(await one(zeros, { ratio: 1100 })).toMatchObject({ code: 'written' });
		expect(await one({}, { memberBytes: CSV.length - 1 })).toMatchObject({ code: 'member-too-large' });
		expect(await one({}, { memberBytes: CSV.length })).toMatchObject({ code: 'written' });
		expect(await one({}, { totalBytes: CSV.length - 1 })).toMatchObject({
			code: 'archive-too-large',
			written: ['m-0']
		});
	});

	it('refuses more files, or deeper folders, than its limits', async () => {
		const three = zipBytes([0, 1, 2].map((i) => ({ name: `${i}.csv`, content: CSV })));
		expect((await unpack(three, { members: 2 })).refusal?.code).toBe('archive-too-many');
		expect((await unpack(three, { members: 3 })).refusal).toBeNull();
		expect(await one({ name: 'a/b/c/r.csv' }, { depth: 2 })).toMatchObject({ code: 'member-too-deep' });
		expect(await one({ name: 'a/b/c/r.csv' }, { depth: 3 })).toMatchObject({ code: 'written' });
	});

	it('refuses an archive whose files share bytes, before anything is unpacked', async () => {
		const archive = zipBytes([
			{ name: 'a.csv', content: CSV, stored: true },
			{ name: 'b.csv', content: CSV, stored: true, statedOffset: 0 }
		]);
		expect(await unpack(archive)).toMatchObject({ refusal: { code: 'archive-overlaps' }, written: [] });
	});

	it('refuses an archive that was cut off, is empty, or holds folders alone', async () => {
		const archive = zipBytes([{ name: 'a.csv', content: CSV }]);
		expect((await unpack(archive.subarray(0, archive.length - 5))).refusal?.code).toBe('archive-damaged');
		expect((await unpack(archive.subarray(30))).refusal?.code).toMatch(/^archive-damaged|^archive-overlaps/);
		expect((await unpack(zipBytes([]))).refusal?.code).toBe('archive-empty');
		expect((await unpack(zipBytes([{ name: 'a/', content: '' }]))).refusal?.code).toBe('archive-empty');
	});

	it('takes two files of one name: names are shown and are no paths', async () => {
		const archive = zipBytes([1, 2].map((i) => ({ name: 'ride.csv', content: CSV + i })));
		expect((await unpack(archive)).written).toEqual(['m-0', 'm-1']);
	});

	it('has a plain sentence for every refusal', async () => {
		const { seen } = await unpack(zipBytes([{ name: '../a.csv', content: CSV }]));
		const [{ outcome }] = seen;
		expect(outcome.kind === 'refused' && outcome.refusal.sentence).toMatch(/^[A-Z].+\.$/);
	});
});
