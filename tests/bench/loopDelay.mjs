// Preloaded into a server that a bench watches (node --import): how long its event loop was held up since the first
// SIGUSR2, and how long it had each page that the bench asked for, from the request's head until the answer was handed
// over, is written into the file that SLIP_LEDGER_LOOP_FILE names at the second one.
import { subscribe } from 'node:diagnostics_channel';
import { writeFileSync } from 'node:fs';
import { monitorEventLoopDelay } from 'node:perf_hooks';

if (process.argv[2] === 'serve') {
	const delay = monitorEventLoopDelay({ resolution: 1 });
	let counts = false;
	const began = new WeakMap();
	const pagesMs = [];
	subscribe('http.server.request.start', ({ request }) => {
		if (counts && request.headers['x-bench'] === 'page') began.set(request, performance.now());
	});
	subscribe('http.server.response.finish', ({ request }) => {
		const from = began.get(request);
		if (from !== undefined) pagesMs.push(performance.now() - from);
	});
	process.on('SIGUSR2', () => {
		if (!counts) {
			delay.enable();
			counts = true;
			return;
		}
		const ms = (value) => value / 1e6;
		const figures = { longestMs: ms(delay.max), p99Ms: ms(delay.percentile(99)), pagesMs };
		writeFileSync(process.env.SLIP_LEDGER_LOOP_FILE, JSON.stringify(figures));
	});
}
