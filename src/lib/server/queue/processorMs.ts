import { readFileSync } from 'node:fs';

/** clock ticks a second of processor times (Linux, USER_HZ) */
const TICKS = 100;

/**
 * Processor time that a process has had so far, of all its threads.
 *
 * @returns milliseconds; null when the process is gone or the system does not say
 */
export function processorMs(pid: number): number | null {
	try {
		const stat = readFileSync(`/proc/${pid}/stat`, 'latin1');
		// the name in brackets may hold anything; user and system time are the 14th and 15th field
		const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
		const ticks = Number(fields[11]) + Number(fields[12]);
		return Number.isFinite(ticks) ? (ticks / TICKS) * 1000 : null;
	} catch {
		return null;
	}
}
