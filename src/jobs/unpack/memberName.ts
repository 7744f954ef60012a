import { getFileNameLowLevel, type Entry } from 'yauzl';

const LONGEST = 1000;

/**
 * The name of a file in an archive, with its folders. Where the archive does not say how it is written, UTF-8 is
 * tried before the code page that the format names (437): some systems write UTF-8 and do not say so, and text
 * in that page is hardly ever valid UTF-8.
 *
 * @returns at most 1000 characters, with "/" between folders; may hold anything, so it is shown and never a path
 */
export function memberName(
	entry: Pick<Entry, 'generalPurposeBitFlag' | 'fileNameRaw' | 'extraFields'>
): string {
	const said = getFileNameLowLevel(entry.generalPurposeBitFlag, entry.fileNameRaw, entry.extraFields, false);
	const name = saysUtf8(entry) ? said : (asUtf8(entry.fileNameRaw) ?? said);
	return name.replaceAll('\\', '/').slice(0, LONGEST).toWellFormed();
}

/** bit 11 of the flags, or the extra field that repeats the name in UTF-8 */
function saysUtf8({
	generalPurposeBitFlag,
	extraFields
}: Pick<Entry, 'generalPurposeBitFlag' | 'extraFields'>) {
	return (generalPurposeBitFlag & 0x800) !== 0 || extraFields.some(({ id }) => id === 0x7075);
}

function asUtf8(raw: Uint8Array): string | null {
	try {
		return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(raw);
	} catch {
		return null;
	}
}
