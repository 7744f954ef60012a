import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/**
 * Resident memory of a process: from /proc where there is one, else from `ps`.
 *
 * @returns bytes; null when the process is gone or the system does not say
 */
export function residentBytes(pid: number): number | null {
	if (process.platform === 'linux') return fromProc(pid);
	const answer = spawnSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8', timeout: 2000 });
	const kilobytes = Number.parseInt(answer.stdout, 10);
	return Number.isFinite(kilobytes) ? kilobytes * 1024 : null;
}

/** VmRSS is in kB whatever the page size is, unlike /proc/PID/statm. */
function fromProc(pid: number): number | null {
	try {
		const kilobytes = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'latin1'))?.[1];
		return kilobytes === undefined ? null : Number(kilobytes) * 1024;
	} catch {
		return null;
	}
}
