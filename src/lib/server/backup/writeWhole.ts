import { randomBytes } from 'node:crypto';
import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { syncFolder } from '../store/sourceStore';

/** Writes a small file so that its name stands for the old content or for the new one, whatever happens. */
export function writeWhole(path: string, content: string): void {
	const part = `${path}.${randomBytes(8).toString('hex')}.part`;
	try {
		writeFileSync(part, content, { flag: 'wx' });
		const file = openSync(part, 'r+');
		try {
			fsyncSync(file);
		} finally {
			closeSync(file);
		}
		renameSync(part, path);
	} finally {
		rmSync(part, { force: true });
	}
	syncFolder(dirname(path));
}
