import { statSync } from 'node:fs';
import type { Readable } from 'node:stream';
import { open, type Entry, type ZipFile } from 'yauzl';
import { LedgerRefusal } from '../refusal';
import { noArchive, readManifest, type Manifest } from './manifest';

/** what an archive of ours may hold; every other name is refused, whatever it points to */
const OURS =
	/^(README\.txt|manifest\.json|tables\/[a-z][a-z0-9_]{0,63}\.json|sources\/([0-9a-f]{2})\/\2[0-9a-f]{62})$/;
const MOST_ENTRIES = 500_000;
/** deflate reaches 1032; tables of the example workshop reach 6.6 together, one of them 21 */
const MOST_EXPANSION = 200;
/** small files may expand by more: nobody fills a disk with them */
const FREE_BYTES = 32 * 2 ** 20;
const LARGEST_MANIFEST_BYTES = 128 * 2 ** 20;

export interface OpenArchive {
	readonly manifest: Manifest;
	/** bytes of everything that is in it, unpacked */
	readonly unpackedBytes: number;
	has(path: string): boolean;
	/** unpacked size of a part; 0 when it is not there */
	sizeOf(path: string): number;
	/** @throws LedgerRefusal wrong-value when it is not there */
	read(path: string): Promise<Readable>;
	close(): void;
}

/**
 * Opens an archive for reading and looks at what it says of itself before anything is unpacked: only names
 * that an archive of ours has, none twice, and not more than it can honestly unpack to.
 *
 * @throws LedgerRefusal wrong-value, too-large or newer-ledger
 */
export async function openArchive(path: string): Promise<OpenArchive> {
	const packedBytes = sizeOfFile(path);
	const zip = await openZip(path);
	try {
		const entries = await listEntries(zip);
		let unpackedBytes = 0;
		for (const { uncompressedSize } of entries.values()) unpackedBytes += uncompressedSize;
		if (unpackedBytes > FREE_BYTES + MOST_EXPANSION * packedBytes) throw bomb();
		const read = (name: string) => {
			const entry = entries.get(name);
			if (!entry) throw noArchive(`${name} is missing`);
			return openPart(zip, entry);
		};
		if ((entries.get('manifest.json')?.uncompressedSize ?? 0) > LARGEST_MANIFEST_BYTES) throw bomb();
		const manifest = readManifest(await textOf(await read('manifest.json')));
		return {
			manifest,
			unpackedBytes,
			has: (name) => entries.has(name),
			sizeOf: (name) => entries.get(name)?.uncompressedSize ?? 0,
			read: async (name) => read(name),
			close: () => zip.close()
		};
	} catch (error) {
		zip.close();
		throw error;
	}
}

function sizeOfFile(path: string): number {
	try {
		return statSync(path).size;
	} catch {
		throw new LedgerRefusal('not-found', `There is no file ${path}.`);
	}
}

function openZip(path: string): Promise<ZipFile> {
	return new Promise((resolve, reject) => {
		const options = { lazyEntries: true, autoClose: false, strictFileNames: true, validateEntrySizes: true };
		open(path, options, (error, zip) => (error ? reject(noArchive(error.message)) : resolve(zip)));
	});
}

/** Unsafe names (upwards, absolute, with backslashes) are refused by the zip library before ours are. */
function listEntries(zip: ZipFile): Promise<Map<string, Entry>> {
	return new Promise((resolve, reject) => {
		const entries = new Map<string, Entry>();
		zip.on('error', (error: Error) => reject(noArchive(error.message)));
		zip.on('end', () => resolve(entries));
		zip.on('entry', (entry: Entry) => {
			const name = String(entry.fileName);
			if (!OURS.test(name)) return reject(noArchive(`"${name.slice(0, 80)}" has no place in one`));
			if (entries.has(name)) return reject(noArchive(`${name} is in it twice`));
			if (entries.size >= MOST_ENTRIES) return reject(bomb());
			entries.set(name, entry);
			zip.readEntry();
		});
		zip.readEntry();
	});
}

/** The library ends a part with an error when it unpacks to more, or to less, than it says. */
function openPart(zip: ZipFile, entry: Entry): Promise<Readable> {
	return new Promise((resolve, reject) => {
		zip.openReadStream(entry, (error, stream) =>
			error ? reject(noArchive(error.message)) : resolve(stream)
		);
	});
}

async function textOf(stream: Readable): Promise<string> {
	const pieces: Buffer[] = [];
	try {
		for await (const piece of stream) pieces.push(piece as Buffer);
	} catch (error) {
		throw noArchive((error as Error).message);
	}
	return Buffer.concat(pieces).toString('utf8');
}

function bomb(): LedgerRefusal {
	return new LedgerRefusal(
		'too-large',
		'This archive would unpack to far more than an archive of a ledger does; nothing was changed.'
	);
}
