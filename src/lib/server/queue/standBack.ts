import { setPriority } from 'node:os';

/**
 * How far a process stands back, of -20 to 19. Beside one that does not, which wants all of a processor, it gets about a
 * quarter or a tenth of it (sched(7)); where nobody else wants it, all.
 */
export const STANDS_BACK = { little: 5, far: 10 } as const;

/** Lets a process work only with what the server and other programs leave of the processors. */
export function standBack(pid: number | undefined, by: number): void {
	if (pid === undefined) return;
	try {
		setPriority(pid, by);
	} catch {
		// it has ended already, or the system does not let us: then it works as everybody does
	}
}
