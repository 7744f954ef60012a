import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder above this program that holds `path`; null when none does. */
export function folderAboveWith(path: string): string | null {
	let folder = dirname(fileURLToPath(import.meta.url));
	for (;;) {
		if (existsSync(join(folder, path))) return folder;
		const above = dirname(folder);
		if (above === folder) return null;
		folder = above;
	}
}
