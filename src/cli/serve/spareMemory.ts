import { setFlagsFromString } from 'node:v8';

/**
 * Has the engine collect sooner what nobody needs any more instead of taking more memory from the system. Pages make
 * much that is gone at once and the server keeps little. How large the part for what was just made may grow can only be
 * said before the engine starts: `npm start`, the service and the container do (`--max-semi-space-size`). Figures
 * measured: tests/bench/bulk-figures.md.
 */
export function spareMemory(): void {
	setFlagsFromString('--heap-growing-percent=30');
}
