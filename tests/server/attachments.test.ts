import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
	attachFile,
	attachmentFile,
	createBuild,
	LARGEST_ATTACHMENT_BYTES,
	listAttachments,
	withdrawAttachment
} from '$lib/server';
import { grayPng } from '$lib/server/example/grayPng';
import { mediaType } from '$lib/server/hardware/mediaType';
import { jpegWith, SECRET } from './photos';
import { freshLedger, rowsOf } from './testLedger';

const PNG = Buffer.from(grayPng(2, 2, new Uint8Array(4)));
const bytesOf = (text: string) => Buffer.from(text, 'latin1');

function withBuild() {
	const test = freshLedger();
	const buildId = createBuild(test.ledger, test.actor, { name: 'B', description: '' });
	const attach = (bytes: Uint8Array, name = 'photo.png', subjectId = buildId) =>
		attachFile(test.ledger, test.actor, { subject: 'build', subjectId, name, bytes, caption: 'the ring' });
	return { ...test, buildId, attach };
}

describe('attachFile', () => {
	it('keeps the file as it came, under its hash, and lists it with who attached it', async () => {
		const { ledger, buildId, attach } = withBuild();
		const id = await attach(PNG, '../../ring <1>.png');
		expect(listAttachments(ledger, 'build', buildId)).toMatchObject([
			{ id, fileName: 'ring 1.png', mediaType: 'image/png', bytes: PNG.length, caption: 'the ring', by: 'P1' }
		]);
		const file = attachmentFile(ledger, id)!;
		expect(readFileSync(file.path)).toEqual(PNG);
		expect(rowsOf(ledger, 'SELECT sha256 FROM source')).toEqual(
			rowsOf(ledger, 'SELECT sha256 FROM attachment')
		);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
	});

	it('keeps a photo without what the camera wrote beside it, and takes no half of one', async () => {
		const { ledger, attach } = withBuild();
		const photo = jpegWith({ orientation: 6 });
		const kept = readFileSync(attachmentFile(ledger, await attach(photo))!.path);
		expect(kept.toString('latin1')).not.toContain(SECRET);
		await expect(attach(photo.subarray(0, -2))).rejects.toThrow('cut off or damaged');
		// the same photo, whoever cleaned it before
		await expect(attach(kept)).rejects.toMatchObject({ code: 'conflict' });
	});

	it('takes one content for several things but not twice for one', async () => {
		const { ledger, actor, attach } = withBuild();
		await attach(PNG);
		await expect(attach(PNG, 'other name.png')).rejects.toMatchObject({ code: 'conflict' });
		const other = createBuild(ledger, actor, { name: 'C', description: '' });
		await attach(PNG, 'photo.png', other);
		expect(rowsOf(ledger, 'SELECT 1 FROM source')).toHaveLength(1);
	});

	it('refuses what is empty, too large, of another kind or for nothing, and keeps none of it', async () => {
		const { ledger, attach } = withBuild();
		const large = Buffer.concat([PNG, Buffer.alloc(LARGEST_ATTACHMENT_BYTES)]);
		await expect(attach(Buffer.alloc(0))).rejects.toMatchObject({ code: 'wrong-value' });
		await expect(attach(large)).rejects.toMatchObject({ code: 'too-large' });
		await expect(attach(bytesOf('<svg onload="x"/>'), 'a.png')).rejects.toThrow('Only pictures');
		await expect(attach(PNG, 'a.png', 99)).rejects.toMatchObject({ code: 'not-found' });
		expect(rowsOf(ledger, 'SELECT 1 FROM attachment')).toEqual([]);
		expect(rowsOf(ledger, 'SELECT 1 FROM source')).toEqual([]);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
	});
});

describe('withdrawAttachment', () => {
	it('takes it out of sight with a reason; row and file stay', async () => {
		const { ledger, actor, buildId, attach } = withBuild();
		const id = await attach(PNG);
		const { path } = attachmentFile(ledger, id)!;
		const of = { subject: 'build' as const, subjectId: buildId };
		expect(() => withdrawAttachment(ledger, actor, of, id, '')).toThrow('reason');
		expect(() => withdrawAttachment(ledger, actor, { ...of, subjectId: 99 }, id, 'other')).toThrow('no such');
		withdrawAttachment(ledger, actor, of, id, 'shows another hub');
		expect(listAttachments(ledger, 'build', buildId)[0].withdrawnReason).toBe('shows another hub');
		expect(attachmentFile(ledger, id)).toBeNull();
		expect(existsSync(path)).toBe(true);
		expect(() => withdrawAttachment(ledger, actor, of, id, 'again')).toThrow('already');
		await attach(PNG);
		expect(listAttachments(ledger, 'build', buildId)).toHaveLength(2);
	});
});

describe('mediaType', () => {
	it('tells a file by its first bytes, whatever it is called', () => {
		expect(mediaType(PNG)).toBe('image/png');
		expect(mediaType(Buffer.from('ffd8ffe0', 'hex'))).toBe('image/jpeg');
		expect(mediaType(bytesOf('RIFF\u0000\u0000\u0000\u0000WEBPVP8 '))).toBe('image/webp');
		expect(mediaType(bytesOf('%PDF-1.7\n'))).toBe('application/pdf');
		expect(mediaType(Buffer.from('torque 12 Nm – measured\n'))).toBe('text/plain');
	});

	it('does not take markup, programs, archives or bytes that are no text', () => {
		for (const bytes of [
			'<!doctype html>',
			'  <svg xmlns="x">',
			'MZ\u0000\u0001',
			'PK\u0003\u0004',
			'',
			'\u00e9\u0000'
		])
			expect(mediaType(bytesOf(bytes))).toBeNull();
		expect(mediaType(Buffer.from([0xff, 0xfe, 0x41]))).toBeNull();
	});
});
