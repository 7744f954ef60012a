import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { randomBytes } from 'node:crypto';
import { open, rm } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { isZip } from '../../../jobs/unpack/looksLikeRide';
import type { Ledger } from '../ledger/openLedger';
import { faultPoint } from './faultPoint';
import { syncFolderBeside } from './sourceStore';

/** Where an archive lies until all that is in it is written down; it is no source and goes then. */
export function archivePath(folder: string, sha256: string): string {
	if (!/^[0-9a-f]{64}$/.test(sha256)) throw new RangeError('not a SHA-256 in hex');
	return join(folder, 'archives', sha256);
}

/** Whether a file begins like a zip archive; names can be wrong. */
export async function isZipFile(path: string): Promise<boolean> {
	const file = await open(path, 'r');
	try {
		const head = Buffer.alloc(4);
		const { bytesRead } = await file.read(head, 0, 4, 0);
		return isZip(head.subarray(0, bytesRead));
	} finally {
		await file.close();
	}
}

/** Gives a complete archive its place, and waits for the disk beside the pages; the same bytes twice keep what is there. */
export async function moveToArchives(ledger: Ledger, from: string, sha256: string): Promise<void> {
	const target = archivePath(ledger.folder, sha256);
	if (existsSync(target)) {
		rmSync(from, { force: true });
		return;
	}
	const folder = join(ledger.folder, 'archives');
	mkdirSync(folder, { recursive: true });
	renameSync(from, target);
	await syncFolderBeside(folder);
}

/** What the files of an archive are called while they are written, before they have their place. */
export function memberPlace(ledger: Ledger, importId: number): string {
	return join(ledger.folder, 'incoming', `archive-${importId}-`);
}

/** Takes away what of an archive was on its way into the store when its unpacking broke off. */
export function dropMembers(ledger: Ledger, importId: number): void {
	dropBeginning(ledger, basename(memberPlace(ledger, importId)));
}

/** Takes an archive's bytes away unless a row still needs them. */
export function dropArchive(ledger: Ledger, sha256: string): void {
	if (!isNeeded(ledger, sha256)) rmSync(archivePath(ledger.folder, sha256), { force: true });
}

/** what a file is called that only waits to be gone */
const GOING = 'going-';

/**
 * The same while pages are answered: to free gigabytes takes the disk a while. They lose their name first, so that the
 * same archive, handed in meanwhile, finds its place free.
 */
export async function dropArchiveBeside(ledger: Ledger, sha256: string): Promise<void> {
	const path = archivePath(ledger.folder, sha256);
	if (isNeeded(ledger, sha256) || !existsSync(path)) return;
	const aside = join(ledger.folder, 'incoming', `${GOING}${randomBytes(8).toString('hex')}`);
	renameSync(path, aside);
	faultPoint('archive-aside');
	await rm(aside, { force: true });
}

/** Takes away what a stop left of archives that were on their way out. */
export function dropGoing(ledger: Ledger): void {
	dropBeginning(ledger, GOING);
}

function isNeeded(ledger: Ledger, sha256: string): boolean {
	const needed = ledger.database
		.prepare("SELECT 1 FROM import WHERE archive_sha256 = ? AND stage IN ('unpacking', 'failed')")
		.get(sha256);
	return needed !== undefined;
}

function dropBeginning(ledger: Ledger, begins: string): void {
	for (const name of readdirSync(join(ledger.folder, 'incoming')))
		if (name.startsWith(begins)) rmSync(join(ledger.folder, 'incoming', name), { force: true });
}
