/**
 * Lets the fault tests show that a file which takes too long, too much memory or the whole process with it
 * is stopped: with SLIP_LEDGER_TROUBLE set, a file whose first bytes spell one of these words behaves so.
 * Without the variable this does nothing.
 */
export function troubleForTests(bytes: Uint8Array): void {
	if (!process.env.SLIP_LEDGER_TROUBLE) return;
	const word = Buffer.from(bytes.subarray(0, 16)).toString('latin1').split('\n')[0];
	if (word === 'TIME') for (;;);
	if (word === 'CRASH') process.kill(process.pid, 'SIGKILL');
	if (word === 'MEMORY') {
		const kept: Buffer[] = [];
		// touched page by page, slowly enough to be seen
		for (;;) {
			kept.push(Buffer.alloc(16 * 2 ** 20, 1));
			Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
		}
	}
}
