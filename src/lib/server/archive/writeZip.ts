import { PassThrough, Readable } from 'node:stream';
import { ZipFile } from 'yazl';

export interface ZipPart {
	readonly path: string;
	/** opened when its turn comes */
	readonly open: () => Readable;
	/** false for what is compressed already */
	readonly compress?: boolean;
}

/**
 * A zip file as a stream: each part is opened when the one before it is through, so that nothing is held in
 * memory. When the reader goes away in the middle, the part under way is closed.
 *
 * @param made instant that stands with each part
 * @param done called once, after the last byte or on any other end; by then no part is open
 */
export function writeZip(parts: readonly ZipPart[], made: Date, done: () => void): Readable {
	const zip = new ZipFile();
	const output = new PassThrough();
	let current: Readable | null = null;
	for (const { path, open, compress = true } of parts) {
		zip.addReadStreamLazy(path, { mtime: made, compress }, (take) => {
			try {
				const part = open();
				current = part;
				part.once('error', (error) => output.destroy(error));
				take(null, part);
			} catch (error) {
				output.destroy(error as Error);
			}
		});
	}
	zip.on('error', (error) => output.destroy(error as Error));
	zip.outputStream.on('error', (error) => output.destroy(error));
	zip.outputStream.pipe(output);
	output.once('close', () => {
		const open = current;
		if (!open || open.destroyed) return done();
		open.once('close', done);
		open.destroy();
	});
	zip.end();
	return output;
}
