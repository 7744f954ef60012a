// Preloaded into a server that a bench watches (node --import): how long its event loop was held up since the first
// SIGUSR2 is written into the file that SLIP_LEDGER_LOOP_FILE names at the second one.
import { writeFileSync } from 'node:fs';
import { monitorEventLoopDelay } from 'node:perf_hooks';

if (process.argv[2] === 'serve') {
	const delay = monitorEventLoopDelay({ resolution: 1 });
	let counts = false;
	process.on('SIGUSR2', () => {
		if (!counts) {
			delay.enable();
			counts = true;
			return;
		}
		const ms = (value) => value / 1e6;
		const figures = { longestMs: ms(delay.max), p99Ms: ms(delay.percentile(99)) };
		writeFileSync(process.env.SLIP_LEDGER_LOOP_FILE, JSON.stringify(figures));
	});
}
