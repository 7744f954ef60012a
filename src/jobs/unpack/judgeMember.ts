import type { Entry } from 'yauzl';
import type { MemberOutcome, UnpackLimits } from './messages';
import { UnpackRefused } from './unpackRefusal';

/** a small file may expand by more: nobody fills a disk with it */
const FREE_BYTES = 2 ** 20;
const STORED = 0;
const DEFLATED = 8;
const FILE_TYPE = 0o170000;
const REGULAR = 0o100000;

/**
 * What can be said of a file in an archive before it is unpacked.
 *
 * @param name with its folders
 * @returns left out where it is hidden or of the system; null = unpack it
 * @throws UnpackRefused
 */
export function judgeMember(
	name: string,
	entry: Pick<
		Entry,
		| 'generalPurposeBitFlag'
		| 'compressionMethod'
		| 'compressedSize'
		| 'uncompressedSize'
		| 'externalFileAttributes'
	>,
	limits: UnpackLimits
): MemberOutcome | null {
	const parts = name.split('/');
	if (/^\/|^[a-z]:/i.test(name) || parts.includes('..') || name.includes('\0'))
		throw new UnpackRefused('member-name', 'absolute, upwards or with a zero in it');
	const type = (entry.externalFileAttributes >>> 16) & FILE_TYPE;
	if (type !== 0 && type !== REGULAR)
		throw new UnpackRefused('member-no-file', `file type ${type.toString(8)} in its attributes`);
	if (parts.some((part) => (part.startsWith('.') && part !== '.') || part === '__MACOSX'))
		return { kind: 'left out', sentence: 'Hidden files are left out.' };
	if (parts.length - 1 > limits.depth)
		throw new UnpackRefused('member-too-deep', `${parts.length - 1} folders, the limit is ${limits.depth}`);
	if ((entry.generalPurposeBitFlag & 1) !== 0) throw new UnpackRefused('member-locked', 'encrypted');
	if (entry.compressionMethod !== STORED && entry.compressionMethod !== DEFLATED)
		throw new UnpackRefused('member-packing', `method ${entry.compressionMethod}`);
	const { compressedSize: packed, uncompressedSize: bytes } = entry;
	if (bytes > limits.memberBytes)
		throw new UnpackRefused('member-too-large', `${bytes} bytes, the limit is ${limits.memberBytes}`);
	if (bytes > FREE_BYTES && bytes > packed * limits.ratio)
		throw new UnpackRefused(
			'member-expands',
			`${packed} bytes to ${bytes}, the limit is ${limits.ratio} to one`
		);
	return null;
}
