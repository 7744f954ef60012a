import { setPriority } from 'node:os';

/** of -20 to 19: what is at work at 10 gets about a tenth of a processor that somebody else wants too (sched(7)) */
const STANDS_BACK = 10;

/**
 * Lets a child process stand back behind the server: pages are answered first, also where the machine has no processor to
 * spare. On a machine with nothing else to do it works as quickly as before.
 */
export function standBack(pid: number | undefined): void {
	if (pid === undefined) return;
	try {
		setPriority(pid, STANDS_BACK);
	} catch {
		// it has ended already, or the system does not let us: then it works as everybody does
	}
}
