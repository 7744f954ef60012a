import { createHash } from 'node:crypto';
import { open, rm, type FileHandle } from 'node:fs/promises';
import type { Readable } from 'node:stream';
import { crc32 } from 'node:zlib';
import type { Entry, ZipFile } from 'yauzl';
import type { Member } from './listMembers';
import { HEAD_BYTES, isZip, looksLikeRide } from './looksLikeRide';
import type { MemberOutcome } from './messages';
import { UnpackRefused } from './unpackRefusal';

/**
 * Unpacks one file to disk, piece by piece, and waits until the disk has it. The size that the archive states is
 * the most that is written, and its checksum must agree.
 *
 * @param path where it goes; what lies there is from an attempt that broke off
 * @throws UnpackRefused for an archive in the archive or a damaged file; nothing lies at the path then
 */
export async function writeMember(
	zip: ZipFile,
	{ facts, entry }: Member,
	path: string
): Promise<MemberOutcome> {
	const stream = await openMember(zip, entry);
	const hash = createHash('sha256');
	const pieces = checked(stream, entry);
	const head = await firstPieces(pieces);
	if (isZip(head)) {
		stream.destroy();
		if (/\.zip$/i.test(facts.name)) throw new UnpackRefused('member-archive', 'begins like a zip archive');
	}
	if (!looksLikeRide(head, facts.name)) {
		stream.destroy();
		return { kind: 'left out', sentence: 'No ride by its name and its first bytes.' };
	}
	const file = await open(path, 'w');
	try {
		let bytes = await write(file, head);
		hash.update(head);
		for await (const piece of pieces) {
			bytes += await write(file, piece);
			hash.update(piece);
		}
		await file.sync();
		return { kind: 'written', path, sha256: hash.digest('hex'), bytes };
	} catch (error) {
		await rm(path, { force: true });
		throw error;
	} finally {
		stream.destroy();
		await file.close();
	}
}

function openMember(zip: ZipFile, entry: Entry): Promise<Readable> {
	return new Promise((resolve, reject) => {
		zip.openReadStream(entry, (error, stream) =>
			error ? reject(new UnpackRefused('member-damaged', error.message)) : resolve(stream)
		);
	});
}

/** The member's bytes; fails where they are more or fewer than stated, or other ones. */
async function* checked(stream: Readable, entry: Entry): AsyncGenerator<Uint8Array> {
	let bytes = 0;
	let sum = 0;
	try {
		for await (const piece of stream as AsyncIterable<Buffer>) {
			bytes += piece.length;
			if (bytes > entry.uncompressedSize) break;
			sum = crc32(piece, sum);
			yield piece;
		}
	} catch (error) {
		throw new UnpackRefused('member-damaged', error instanceof Error ? error.message : String(error));
	}
	if (bytes !== entry.uncompressedSize)
		throw new UnpackRefused('member-damaged', `not the ${entry.uncompressedSize} bytes that the list states`);
	if (sum !== entry.crc32) throw new UnpackRefused('member-damaged', 'its checksum does not agree');
}

/** At least as many bytes as it takes to tell what the file is, or all of it. */
async function firstPieces(pieces: AsyncGenerator<Uint8Array>): Promise<Uint8Array> {
	const first: Uint8Array[] = [];
	for (let length = 0; length < HEAD_BYTES;) {
		const { done, value } = await pieces.next();
		if (done) break;
		first.push(value);
		length += value.length;
	}
	return Buffer.concat(first);
}

async function write(file: FileHandle, piece: Uint8Array): Promise<number> {
	let written = 0;
	while (written < piece.length) written += (await file.write(piece, written)).bytesWritten;
	return piece.length;
}
