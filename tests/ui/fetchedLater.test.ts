import { afterEach, expect, it, vi } from 'vitest';
import { fetchedLater } from '$lib/ui/fetchedLater';

afterEach(() => vi.unstubAllGlobals());
const server = (answer: () => Promise<{ ok: boolean }>) => vi.stubGlobal('fetch', vi.fn(answer));
const away = () => server(() => Promise.reject(new TypeError('Failed to fetch')));

it('does not try a module while the server is away, so that it can be tried again, and keeps what came', async () => {
	const load = vi.fn(() => Promise.resolve('the part'));
	away();
	expect(await fetchedLater(load)).toBeNull();
	expect(load).not.toHaveBeenCalled();
	server(() => Promise.resolve({ ok: true }));
	expect(await fetchedLater(load)).toBe('the part');
	away();
	expect(await fetchedLater(load)).toBe('the part');
	expect(load).toHaveBeenCalledTimes(1);
});

it('does not come from a server that has another program by now, nor when the module itself fails', async () => {
	server(() => Promise.resolve({ ok: false }));
	const load = vi.fn(() => Promise.resolve('the part'));
	expect(await fetchedLater(load)).toBeNull();
	expect(load).not.toHaveBeenCalled();
	server(() => Promise.resolve({ ok: true }));
	expect(await fetchedLater(() => Promise.reject(new TypeError('broken')))).toBeNull();
});
