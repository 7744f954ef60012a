import { cleanJpeg } from './cleanJpeg';
import { cleanPng } from './cleanPng';
import { cleanWebp } from './cleanWebp';
import type { MediaType } from './mediaType';

/**
 * A picture without what a camera writes beside it: the place where it was taken, serial numbers, names, a second
 * small picture, sound or film behind its end. The picture itself stays as it is, to the byte; so do its colours and
 * which side is up.
 *
 * @param type told from the bytes, as `mediaType` does
 * @returns the same bytes for what is no picture; null when the picture is cut off or not built as it should be
 */
export function cleanPicture(bytes: Uint8Array, type: MediaType): Uint8Array | null {
	if (type === 'image/jpeg') return cleanJpeg(bytes);
	if (type === 'image/png') return cleanPng(bytes);
	if (type === 'image/webp') return cleanWebp(bytes);
	return bytes;
}
