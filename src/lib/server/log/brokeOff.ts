/**
 * Whether a request ended because whoever sent it went away in the middle: a phone out of reach, a page that was closed.
 * That is no error of the server. What broke within the server meanwhile still is one.
 *
 * @param aborted whether the connection ended before the request had come whole
 */
export function brokeOff(error: unknown, aborted: boolean): boolean {
	if (!aborted) return false;
	let cause: unknown = error;
	// the reader of a form wraps what the connection said
	for (let depth = 0; cause instanceof Error && depth < 4; depth++) {
		if ((cause as NodeJS.ErrnoException).code === 'ECONNRESET') return true;
		cause = cause.cause;
	}
	return false;
}
