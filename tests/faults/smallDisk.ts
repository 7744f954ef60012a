import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface SmallDisk {
	readonly folder: string;
	/** takes room away until so many bytes are left */
	fillUpTo(leftBytes: number): void;
	/** gives the room back */
	clear(): void;
	readOnly(on: boolean): void;
	remove(): void;
}

function mount(args: string[]): boolean {
	return spawnSync('mount', args, { stdio: 'ignore' }).status === 0;
}

/** A disk of its own in memory, of so many bytes; null where this user may not mount one. */
export function smallDisk(megabytes: number): SmallDisk | null {
	const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-disk-'));
	if (process.platform !== 'linux' || !mount(['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder])) {
		rmSync(folder, { recursive: true, force: true });
		return null;
	}
	const filler = join(folder, 'filler');
	return {
		folder,
		fillUpTo(leftBytes) {
			const { bavail, bsize } = statfsSync(folder);
			writeFileSync(filler, Buffer.alloc(Math.max(0, bavail * bsize - leftBytes), 1));
		},
		clear: () => rmSync(filler, { force: true }),
		readOnly(on) {
			if (!mount(['-o', `remount,${on ? 'ro' : 'rw'}`, folder])) throw new Error('cannot mount anew');
		},
		remove() {
			spawnSync('umount', [folder], { stdio: 'ignore' });
			rmSync(folder, { recursive: true, force: true });
		}
	};
}

/** Whether this user may mount a disk of its own; the tests that need one say so when not. */
export const MAY_MOUNT = (() => {
	const disk = smallDisk(1);
	disk?.remove();
	return disk !== null;
})();

export function folderOn(disk: SmallDisk, name: string): string {
	const folder = join(disk.folder, name);
	mkdirSync(folder, { recursive: true });
	return folder;
}
