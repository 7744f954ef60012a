/** of the time allowed, what a process must have had of a processor before it counts as too slow */
const BUSY_SHARE = 0.5;
/** a process that waits for something that never comes ends after so many times the time allowed */
const LONGEST = 4;

/**
 * Whether a file has had its time. On a machine that is busy with other work a sound file of full size waits for the
 * processor most of the time: it is not refused for that.
 *
 * @param ranMs since the file was begun, by the clock
 * @param busyMs processor time that it had; null = the system does not say
 * @param allowedMs as set
 */
export function tookTooLong(ranMs: number, busyMs: number | null, allowedMs: number): boolean {
	if (ranMs <= allowedMs) return false;
	return busyMs === null || busyMs > BUSY_SHARE * allowedMs || ranMs > LONGEST * allowedMs;
}
