import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Every file below sources/, relative to it ("ab/abcd..."), in order. */
export function storedFiles(dataFolder: string): string[] {
	let folders: string[];
	try {
		folders = readdirSync(join(dataFolder, 'sources')).sort();
	} catch {
		return [];
	}
	return folders.flatMap((folder) => {
		try {
			return readdirSync(join(dataFolder, 'sources', folder))
				.sort()
				.map((name) => `${folder}/${name}`);
		} catch {
			return [folder];
		}
	});
}
