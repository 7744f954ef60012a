import { recogniseFormat } from '$lib/ride/recogniseFormat';
import { isGzip } from '$lib/ride/unpackGzip';

/** as many bytes of a file as the question needs */
export const HEAD_BYTES = 4096;

const CALLED_LIKE_ONE = /\.(fit|tcx|gpx|csv)(\.gz)?$/i;

/**
 * Whether a file in an archive was meant as a ride: by its bytes, or else by its name. What only the name says is
 * a ride is taken too, so that whoever sent it reads why it cannot be read.
 *
 * @param head its first bytes
 */
export function looksLikeRide(head: Uint8Array, name: string): boolean {
	if (CALLED_LIKE_ONE.test(name)) return true;
	if (isGzip(head)) return !/\.(tar\.gz|tgz)$/i.test(name);
	return recogniseFormat(head) !== null;
}

/** Whether bytes are a zip archive: with files in it, without any, or the first of several volumes. */
export function isZip(head: Uint8Array): boolean {
	if (head.length < 4 || head[0] !== 0x50 || head[1] !== 0x4b) return false;
	return (
		(head[2] === 3 && head[3] === 4) || (head[2] === 5 && head[3] === 6) || (head[2] === 7 && head[3] === 8)
	);
}
