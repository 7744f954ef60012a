import { setPriority } from 'node:os';

/** of -20 to 19: at 10 a process gets about a tenth of a processor that somebody else wants too (sched(7)) */
const STANDS_BACK = 10;

/** Lets a process work only with what the server, its other children and other programs leave of the processors. */
export function standBack(pid: number | undefined): void {
	if (pid === undefined) return;
	try {
		setPriority(pid, STANDS_BACK);
	} catch {
		// it has ended already, or the system does not let us: then it works as everybody does
	}
}
