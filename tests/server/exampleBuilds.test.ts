import { existsSync, readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import {
	attachFile,
	attachmentFile,
	buildHardware,
	changeBuild,
	createBuild,
	installExample,
	listParts,
	programmeRows,
	removeExample
} from '$lib/server';
import { grayPng } from '$lib/server/example/grayPng';
import { ringDrawing } from '$lib/server/example/ringDrawing';
import { freshLedger, rowsOf } from './testLedger';

const TABLES = ['part', 'part_length', 'build_part', 'build_torque', 'bench_check', 'attachment', 'source'];

describe('the example workshop that ships', () => {
	it('lists what was in each hub, and the page says what changed from build to build', async () => {
		const { ledger, actor } = freshLedger();
		await installExample(ledger, actor);
		const [original, prototype, retrofit] = programmeRows(ledger).map(({ id }) => buildHardware(ledger, id)!);
		for (const build of [original, prototype, retrofit]) {
			expect(build).toMatchObject({ state: 'in test', engagementWarnings: [], example: true });
			expect(build.bill.length).toBeGreaterThan(10);
		}
		expect(original.bench).toBe('override');
		expect([prototype.bench, retrofit.bench]).toEqual(['passed', 'passed']);
		const ring = prototype.difference!.parts.find(({ kind }) => kind === 'ratchet ring')!;
		expect(ring.fields).toContainEqual({ field: 'revision', before: 'A', after: 'B' });
		expect(retrofit.difference!.parts.map(({ kind, change }) => `${kind} ${change}`)).toEqual(
			expect.arrayContaining([
				'ratchet ring replaced',
				'pawl set replaced',
				'spring replaced',
				'spacer added'
			])
		);
		expect(retrofit.difference!.step).toEqual({ before: 15, after: 10 });
		expect(listParts(ledger).every((part) => part.example)).toBe(true);
		const file = attachmentFile(ledger, retrofit.attachments[0].id)!;
		expect(file.mediaType).toBe('image/png');
		expect(readFileSync(file.path)).toHaveLength(file.bytes);
	});

	it('goes as a whole, also with files that were attached to it since', async () => {
		const { ledger, actor } = freshLedger();
		await installExample(ledger, actor);
		const [{ id }] = programmeRows(ledger);
		const [part] = listParts(ledger);
		const of = [
			{ subject: 'build', subjectId: id },
			{ subject: 'part', subjectId: part.id }
		] as const;
		for (const each of of)
			await attachFile(ledger, actor, { ...each, name: 'n.txt', bytes: Buffer.from(`of ${each.subject}`) });
		const paths = rowsOf(ledger, 'SELECT id FROM attachment').map(
			(row) => attachmentFile(ledger, Number(row.id))!.path
		);
		removeExample(ledger, actor);
		for (const table of TABLES)
			expect([table, rowsOf(ledger, `SELECT 1 FROM ${table}`)]).toEqual([table, []]);
		expect(paths.filter((path) => existsSync(path))).toEqual([]);
	});

	it("leaves a workshop's own build whole: its parts, its words, its attachments", async () => {
		const { ledger, actor } = freshLedger();
		await installExample(ledger, actor);
		const [part] = listParts(ledger);
		const own = createBuild(ledger, actor, { name: 'Own', description: '' });
		const bill = [{ partId: part.id, quantity: 1 }];
		changeBuild(ledger, actor, own, 1, { name: 'Own', description: '', bill });
		const file = { subject: 'build', subjectId: own, name: 'n.txt', bytes: Buffer.from('own') } as const;
		const attached = await attachFile(ledger, actor, file);
		removeExample(ledger, actor);
		expect(buildHardware(ledger, own)).toMatchObject({ bill: [{ part: { number: part.number } }] });
		expect(listParts(ledger)).toMatchObject([{ number: part.number, example: false }]);
		expect(existsSync(attachmentFile(ledger, attached)!.path)).toBe(true);
	});
});

describe('grayPng', () => {
	it('writes a file whose rows inflate to the pixels, each after filter byte 0', () => {
		const png = Buffer.from(grayPng(3, 2, Uint8Array.from([0, 128, 255, 1, 2, 3])));
		expect(png.subarray(12, 16).toString('latin1')).toBe('IHDR');
		expect([png.readUInt32BE(16), png.readUInt32BE(20), png[24], png[25]]).toEqual([3, 2, 8, 0]);
		const length = png.readUInt32BE(33);
		expect([...inflateSync(png.subarray(41, 41 + length))]).toEqual([0, 0, 128, 255, 0, 1, 2, 3]);
		// the checksum of an empty IEND chunk is a constant of the standard's files
		expect(png.subarray(-4).toString('hex')).toBe('ae426082');
		expect(() => grayPng(2, 2, new Uint8Array(3))).toThrow(RangeError);
	});

	it('holds the ring: teeth within, nothing outside', () => {
		const png = Buffer.from(ringDrawing(36));
		const length = png.readUInt32BE(33);
		const rows = inflateSync(png.subarray(41, 41 + length));
		const at = (x: number, y: number) => rows[y * 481 + 1 + x];
		expect([at(240, 240), at(2, 2)]).toEqual([255, 255]);
		expect(at(240, 40)).toBe(214);
	});
});
