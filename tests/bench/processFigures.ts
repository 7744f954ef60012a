import { readdirSync, readFileSync } from 'node:fs';

/** Memory and processor time of a server and of the children that analyse for it, as the system tells them. */
export interface ProcessFigures {
	readonly serverMb: number;
	/** largest resident memory that the server has had so far */
	readonly serverMostMb: number;
	/** of the largest child that analyses now; 0 = none runs */
	readonly childMostMb: number;
	/** of the child that computes figures of many rides; 0 = it does not run */
	readonly readerMostMb: number;
	/** processor seconds of the server itself, and of all of its children, also of those that have ended */
	readonly serverCpuS: number;
	readonly childCpuS: number;
	/** the child that computes figures, while it runs */
	readonly readerCpuS: number;
}

/** Clock ticks a second of processor times (Linux, USER_HZ). */
const TICKS = 100;

/**
 * @param serverPid process id of the server; its children are found by their parent
 */
export function processFigures(serverPid: number): ProcessFigures {
	const children = readdirSync('/proc').filter((name) => /^\d+$/.test(name) && parentOf(name) === serverPid);
	const server = statusOf(String(serverPid));
	const readers = children.filter(isReader);
	const mostOf = (pids: readonly string[]) => Math.max(0, ...pids.map((pid) => statusOf(pid).mostMb));
	const own = cpuOf(String(serverPid));
	return {
		serverMb: server.nowMb,
		serverMostMb: server.mostMb,
		childMostMb: mostOf(children.filter((pid) => !isReader(pid))),
		readerMostMb: mostOf(readers),
		readerCpuS: readers.reduce((sum, pid) => sum + cpuOf(pid).ownS, 0),
		serverCpuS: own.ownS,
		childCpuS: own.endedS + children.reduce((sum, pid) => sum + cpuOf(pid).ownS, 0)
	};
}

/** the figures' child is named by its entry file */
function isReader(pid: string): boolean {
	return readOrNothing(`/proc/${pid}/cmdline`).includes('readers/figures');
}

function statusOf(pid: string): { nowMb: number; mostMb: number } {
	const text = readOrNothing(`/proc/${pid}/status`);
	const kb = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+)`).exec(text)?.[1] ?? 0);
	return { nowMb: kb('VmRSS') / 1024, mostMb: kb('VmHWM') / 1024 };
}

function fieldsOf(pid: string): string[] {
	const text = readOrNothing(`/proc/${pid}/stat`);
	// the name in brackets may hold anything
	return text.slice(text.lastIndexOf(')') + 2).split(' ');
}

function parentOf(pid: string): number {
	return Number(fieldsOf(pid)[1] ?? 0);
}

function cpuOf(pid: string): { ownS: number; endedS: number } {
	const fields = fieldsOf(pid).map(Number);
	if (fields.length < 15) return { ownS: 0, endedS: 0 };
	return { ownS: (fields[11] + fields[12]) / TICKS, endedS: (fields[13] + fields[14]) / TICKS };
}

/** A process may end between two looks. */
function readOrNothing(path: string): string {
	try {
		return readFileSync(path, 'utf8');
	} catch {
		return '';
	}
}
