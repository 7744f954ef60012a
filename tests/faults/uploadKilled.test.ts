import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openLedger } from '$lib/server';
import { builtProgram, freePort, smallRides, start, storedSources, until, type Running } from './program';

const PIECE_BYTES = 20_000;

let build: string;
let bytes: Buffer;
let folder: string;
let server: Running | null = null;
let origin = '';
let cookie = '';

beforeAll(async () => {
	build = await builtProgram();
	bytes = readFileSync(smallRides(1)[0]);
});
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-fault-'));
});
afterEach(async () => {
	server?.child.kill('SIGKILL');
	await server?.ended;
	rmSync(folder, { recursive: true, force: true });
});

async function serve(env: Record<string, string> = {}): Promise<void> {
	const port = await freePort();
	origin = `http://127.0.0.1:${port}`;
	const running = (server = start(build, 'serve', ['--port', String(port), '--data', folder], env));
	await until('the server', () => running.output().includes('is open at'));
}

async function ask(path: string, init: RequestInit = {}): Promise<Response> {
	return fetch(origin + path, {
		redirect: 'manual',
		...init,
		headers: { ...(init.headers as Record<string, string>), cookie, origin }
	});
}

async function chooseName(): Promise<void> {
	const answer = await ask('/welcome?/name', {
		method: 'POST',
		headers: { 'content-type': 'application/x-www-form-urlencoded' },
		body: 'name=Tester'
	});
	cookie = answer.headers.get('set-cookie')!.split(';')[0];
}

async function announce(): Promise<string> {
	const answer = await ask('/uploads', {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ name: 'ride.fit', size: bytes.length })
	});
	return ((await answer.json()) as { id: string }).id;
}

/** Sends pieces from an offset on; the server may be gone at any moment. */
async function send(id: string, from: number): Promise<void> {
	for (let at = from; at < bytes.length; at += PIECE_BYTES) {
		const answer = await ask(`/uploads/${id}`, {
			method: 'PATCH',
			headers: { 'upload-offset': String(at), 'content-type': 'application/octet-stream' },
			body: new Uint8Array(bytes.subarray(at, at + PIECE_BYTES))
		});
		if (!answer.ok) throw new Error(await answer.text());
	}
}

interface Import {
	id: number;
	stage: string;
	rideId: number | null;
}
const imports = async () => ((await (await ask('/imports.json')).json()) as { imports: Import[] }).imports;
const done = () =>
	until('the ride', async () => {
		const [first] = await imports();
		return first?.stage === 'done' ? first : null;
	});

describe('a server that is killed', () => {
	it('in the middle of an upload keeps what came, and the upload goes on after the restart', async () => {
		await serve({ SLIP_LEDGER_FAULT: 'upload-half' });
		await chooseName();
		const id = await announce();
		await expect(send(id, 0)).rejects.toThrow();
		expect((await server!.ended).signal).toBe('SIGKILL');
		await serve();
		const { offset } = (await (await ask(`/uploads/${id}`)).json()) as { offset: number };
		expect(offset).toBeGreaterThanOrEqual(bytes.length / 2);
		expect(offset).toBeLessThan(bytes.length);
		expect(await imports()).toMatchObject([{ stage: 'receiving' }]);
		await send(id, offset);
		await ask(`/uploads/${id}/finish`, { method: 'POST' });
		expect((await done()).rideId).not.toBeNull();
		expect(storedSources(folder)).toHaveLength(1);
	});

	it.each(['source-stored', 'source-moved'])(
		'while it finishes an upload ("%s") puts it into the queue by itself after the restart, once',
		async (stage) => {
			await serve({ SLIP_LEDGER_FAULT: stage });
			await chooseName();
			const id = await announce();
			await send(id, 0);
			await expect(ask(`/uploads/${id}/finish`, { method: 'POST' })).rejects.toThrow();
			await serve();
			const { id: importId } = await done();
			const again = await ask(`/uploads/${id}/finish`, { method: 'POST' });
			expect(await again.json()).toEqual({ importId });
			expect(await imports()).toHaveLength(1);
			expect(storedSources(folder)).toHaveLength(1);
		}
	);

	it.each(['leased', 'channels-written'])(
		'while it analyses ("%s") goes on after the restart',
		async (stage) => {
			await serve({ SLIP_LEDGER_FAULT: stage });
			await chooseName();
			const id = await announce();
			await send(id, 0);
			await ask(`/uploads/${id}/finish`, { method: 'POST' }).catch(() => null);
			expect((await server!.ended).signal).toBe('SIGKILL');
			await serve();
			expect((await done()).rideId).not.toBeNull();
			expect(await imports()).toHaveLength(1);
		}
	);
});

describe('a server that is told to end', () => {
	it('ends with code 0 within seconds and hands the lease back', async () => {
		await serve();
		await chooseName();
		const asked = server!;
		asked.child.kill('SIGTERM');
		const startedMs = performance.now();
		expect(await asked.ended).toMatchObject({ code: 0, signal: null });
		expect(performance.now() - startedMs).toBeLessThan(5000);
		const ledger = openLedger(folder, { migrate: false });
		expect(ledger.database.prepare('SELECT owner FROM lease').all()).toEqual([]);
		ledger.close();
	});
});

describe('the server and the terminal', () => {
	it('share one ledger: what the terminal queues, the server reads, and the terminal says what became of it', async () => {
		await serve();
		await chooseName();
		const { code, output } = await start(build, 'import', ['--data', folder, ...smallRides(2)]).ended;
		expect(output.trim().split('\n')).toHaveLength(2);
		expect(code).toBe(0);
		expect(await imports()).toMatchObject([{ stage: 'done' }, { stage: 'done' }]);
		const page = await ask('/rides', { headers: { accept: 'text/html' } });
		expect(page.status).toBe(200);
	});
});
