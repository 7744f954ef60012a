import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { bulkUpload } from '../../src/routes/rides/bulkUpload.svelte';

beforeEach(() => {
	vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'performance'] });
	vi.stubGlobal('window', {});
});
afterEach(() => {
	vi.useRealTimers();
	vi.unstubAllGlobals();
});

it('says no time left any more where nothing comes through for half a minute, and draws no more once all is sent', async () => {
	let stalls = false;
	let atOffset = 0;
	vi.stubGlobal('fetch', async (address: string, init: RequestInit = {}) => {
		if (stalls) return new Promise<Response>(() => {});
		if (init.method === 'PATCH') {
			atOffset += (init.body as Blob).size;
			await vi.advanceTimersByTimeAsync(1600);
			stalls = atOffset >= 3_000_000;
		}
		const body = address.endsWith('resume') ? {} : { id: 'u1', offset: atOffset, known: [] };
		return new Response(JSON.stringify(body));
	});
	const bulk = bulkUpload(() => {});
	bulk.add([{ file: new File([Buffer.alloc(7_000_000)], 'long.csv'), folder: '' }], {});
	await vi.waitFor(() => expect(stalls).toBe(true));
	await vi.advanceTimersByTimeAsync(1000);
	expect(bulk.view.leftS).toBeGreaterThan(1);
	await vi.advanceTimersByTimeAsync(31_000);
	expect(bulk.view.state).toBe('sending');
	expect(bulk.view.leftS).toBeNull();
	bulk.leave();
	expect(vi.getTimerCount()).toBe(0);
});

it('loads the page anew only where the server answers: else the page would be left, and the files with it', async () => {
	let away = true;
	vi.stubGlobal('fetch', async (address: string) => {
		if (address === '/health.json' && away) throw new TypeError('network');
		return new Response(JSON.stringify({ id: 'u1', offset: 4, known: [], importId: 1 }));
	});
	const load = vi.fn();
	const bulk = bulkUpload(load);
	bulk.add([{ file: new File(['ride'], 'a.fit'), folder: '' }], {});
	await vi.waitFor(() => expect(bulk.view.counts.sent).toBe(1), { interval: 20 });
	await vi.advanceTimersByTimeAsync(7000);
	expect(load).not.toHaveBeenCalled();
	away = false;
	await vi.advanceTimersByTimeAsync(3000);
	expect(load).toHaveBeenCalledTimes(1);
	await vi.advanceTimersByTimeAsync(10_000);
	expect(load).toHaveBeenCalledTimes(1);
	bulk.leave();
	expect(vi.getTimerCount()).toBe(0);
});
