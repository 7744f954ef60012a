import { open, type Entry, type ZipFile } from 'yauzl';
import { memberName } from './memberName';
import type { MemberFacts, UnpackLimits } from './messages';
import { UnpackRefused } from './unpackRefusal';

export interface Member {
	readonly facts: MemberFacts;
	readonly entry: Entry;
}

/** bytes of the header that stands before each file, without its name */
const LOCAL_HEADER_BYTES = 30;

/** Opens an archive; sizes and checksums are held by whoever reads a member. */
export function openZip(path: string): Promise<ZipFile> {
	return new Promise((resolve, reject) => {
		const options = { lazyEntries: true, autoClose: false, decodeStrings: false, validateEntrySizes: false };
		open(path, options, (error, zip) =>
			error ? reject(new UnpackRefused('archive-damaged', error.message)) : resolve(zip)
		);
	});
}

/**
 * All files in an archive, before any is unpacked; folders are none.
 *
 * @throws UnpackRefused when the list is damaged, empty, too long, promises too much, or when files share bytes
 */
export async function listMembers(zip: ZipFile, limits: UnpackLimits): Promise<Member[]> {
	if (zip.entryCount > limits.members)
		throw new UnpackRefused('archive-too-many', `${zip.entryCount} entries, the limit is ${limits.members}`);
	const entries = await readEntries(zip, limits.members);
	refuseOverlaps(entries);
	const members = entries
		.map((entry, member) => ({
			entry,
			facts: { member, name: memberName(entry), bytes: entry.uncompressedSize }
		}))
		.filter(({ facts }) => !facts.name.endsWith('/'));
	if (members.length === 0)
		throw new UnpackRefused('archive-empty', `${entries.length} entries, none a file`);
	const total = members.reduce((sum, { facts }) => sum + facts.bytes, 0);
	if (total > limits.totalBytes)
		throw new UnpackRefused(
			'archive-too-large',
			`${total} bytes unpacked, the limit is ${limits.totalBytes}`
		);
	return members;
}

function readEntries(zip: ZipFile, most: number): Promise<Entry[]> {
	return new Promise((resolve, reject) => {
		const entries: Entry[] = [];
		zip.on('error', (error: Error) =>
			reject(
				/strong encryption/.test(error.message)
					? new UnpackRefused('member-locked', error.message)
					: new UnpackRefused('archive-damaged', error.message)
			)
		);
		zip.on('end', () => resolve(entries));
		zip.on('entry', (entry: Entry) => {
			// the count that the archive states is not trusted
			if (entries.length >= most) return reject(new UnpackRefused('archive-too-many', `more than ${most}`));
			entries.push(entry);
			zip.readEntry();
		});
		zip.readEntry();
	});
}

/** Files whose packed bytes overlap let a small archive unpack to anything at all. */
function refuseOverlaps(entries: readonly Entry[]): void {
	const inOrder = [...entries].sort((a, b) => a.relativeOffsetOfLocalHeader - b.relativeOffsetOfLocalHeader);
	for (let i = 1; i < inOrder.length; i++) {
		const { relativeOffsetOfLocalHeader: offset, compressedSize } = inOrder[i - 1];
		const next = inOrder[i].relativeOffsetOfLocalHeader;
		if (offset + LOCAL_HEADER_BYTES + compressedSize > next)
			throw new UnpackRefused('archive-overlaps', `what begins at ${offset} reaches past ${next}`);
	}
}
