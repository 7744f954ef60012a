import Database from 'better-sqlite3';
import { spawn } from 'node:child_process';
import { connect } from 'node:net';
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { builtProgram, smallRides, start, until } from './program';

const NAME = 'Zacharias Quennell';
const FILE = 'zachariasfromhome';

let build: string;
let home: string;
beforeAll(async () => {
	build = await builtProgram();
	home = mkdtempSync(join(tmpdir(), 'slip-ledger-log-'));
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

it('the log of a whole job is JSON, tells what happened, and holds no names, file names, positions or tokens', async () => {
	const folder = join(home, 'zachariasdata');
	const server = start(build, 'serve', ['--port', '0', '--data', folder], {
		SLIP_LEDGER_LOG_LEVEL: 'trace',
		SLIP_LEDGER_TROUBLE: '1'
	});
	await until('the server', () => server.output().includes('is open at'));
	const origin = /http:\/\/\S+/.exec(server.output())![0];
	const headers: Record<string, string> = { origin };
	const named = await fetch(`${origin}/welcome?/name`, {
		method: 'POST',
		headers: { ...headers, 'content-type': 'application/x-www-form-urlencoded' },
		body: `name=${encodeURIComponent(NAME)}`,
		redirect: 'manual'
	});
	headers.cookie = named.headers.get('set-cookie')!.split(';')[0];
	const upload = async (name: string, bytes: Uint8Array<ArrayBuffer>) => {
		const announced = await fetch(`${origin}/uploads`, {
			method: 'POST',
			headers: { ...headers, 'content-type': 'application/json' },
			body: JSON.stringify({ name, size: bytes.length })
		});
		const { id } = (await announced.json()) as { id: string };
		await fetch(`${origin}/uploads/${id}`, {
			method: 'PATCH',
			headers: { ...headers, 'upload-offset': '0', 'content-type': 'application/octet-stream' },
			body: bytes
		});
		await fetch(`${origin}/uploads/${id}/finish`, { method: 'POST', headers });
		return id;
	};
	const ids = [
		await upload(`${FILE}.fit`, new Uint8Array(readFileSync(smallRides(1)[0]))),
		await upload(`${FILE}-broken.fit`, new Uint8Array(Buffer.from(`nothing of a ride by ${NAME}`))),
		// ends its child each time, until it is given up
		await upload(`${FILE}-crash.fit`, new Uint8Array(Buffer.from('CRASH\nand more')))
	];
	const unfinished = async () =>
		((await (await fetch(`${origin}/health.json`)).json()) as { unfinishedImports: number })
			.unfinishedImports;
	await until('the queue to be empty', async () => (await unfinished()) === 0, 60_000);
	expect((await fetch(`${origin}/ready.json`)).status).toBe(200);
	for (const path of ['/', '/rides', '/rides/1', `/rides/${FILE}`, '/nothing'])
		await fetch(origin + path, { headers });
	server.child.kill('SIGTERM');
	const { code, output } = await server.ended;
	expect(code).toBe(0);

	const lines = output.split('\n').filter((line) => line !== '' && !line.startsWith('Slip Ledger is open'));
	const entries = lines.map((line) => JSON.parse(line) as { level: string; event: string; time: string });
	const events = entries.map(({ event }) => event);
	for (const wanted of [
		'server open',
		'lease taken',
		'file taken up',
		'file done',
		'file refused',
		'file put back',
		'server stops',
		'lease given back'
	])
		expect(events).toContain(wanted);
	for (const { level, time } of entries) {
		expect(['info', 'warn', 'error']).toContain(level);
		expect(new Date(time).toISOString()).toBe(time);
	}
	const log = lines.join('\n').toLowerCase();
	const secrets = ['zacharias', 'quennell', '.fit', folder, home, headers.cookie.split('=')[1], ...ids];
	for (const secret of secrets) expect(log).not.toContain(secret.toLowerCase());
	// positions have many decimals; nothing in a log has
	expect(log).not.toMatch(/\d+\.\d{4,}/);
});

it('tells an upload that its sender breaks off as that and not as an error, and goes on where it ended', async () => {
	const folder = join(home, 'broken-off');
	const server = start(build, 'serve', ['--port', '0', '--data', folder], { SLIP_LEDGER_LOG_LEVEL: 'info' });
	await until('the server', () => server.output().includes('is open at'));
	const origin = /http:\/\/\S+/.exec(server.output())![0];
	const headers: Record<string, string> = { origin, 'content-type': 'application/x-www-form-urlencoded' };
	const named = await fetch(`${origin}/welcome?/name`, {
		method: 'POST',
		headers,
		body: 'name=Tester',
		redirect: 'manual'
	});
	headers.cookie = named.headers.get('set-cookie')!.split(';')[0];
	const announced = await fetch(`${origin}/uploads`, {
		method: 'POST',
		headers: { ...headers, 'content-type': 'application/json' },
		body: JSON.stringify({ name: 'ride.fit', size: 200_000 })
	});
	const { id } = (await announced.json()) as { id: string };
	const offset = async () =>
		((await (await fetch(`${origin}/uploads/${id}`, { headers })).json()) as { offset: number }).offset;
	const url = new URL(origin);
	/** a request whose body is longer than what is sent of it */
	const breakOff = async (
		path: string,
		head: string[],
		sent: number,
		came: () => Promise<boolean> | boolean
	) => {
		const socket = connect(Number(url.port), url.hostname);
		const lines = [path, `Host: ${url.host}`, `Origin: ${origin}`, `Cookie: ${headers.cookie}`, ...head];
		socket.write(`${lines.join('\r\n')}\r\n\r\n`);
		socket.write(Buffer.alloc(sent, 1));
		await until('what was sent', came);
		socket.destroy();
	};
	await breakOff(
		`PATCH /uploads/${id} HTTP/1.1`,
		['Content-Type: application/octet-stream', 'Upload-Offset: 0', 'Content-Length: 200000'],
		70_000,
		async () => (await offset()) === 70_000
	);
	const brokenOff = () => server.output().match(/"event":"request broke off"/g)?.length ?? 0;
	await until('the log to tell it', () => brokenOff() === 1);
	// a form likewise: nothing of it is done
	await breakOff(
		'POST /settings?/forget HTTP/1.1',
		['Content-Type: multipart/form-data; boundary=x', 'Content-Length: 5000', 'Accept: application/json'],
		100,
		() => new Promise((resolve) => setTimeout(() => resolve(true), 300))
	);
	await until('the log to tell it', () => brokenOff() === 2);
	expect(await offset()).toBe(70_000);
	const rest = await fetch(`${origin}/uploads/${id}`, {
		method: 'PATCH',
		headers: { ...headers, 'upload-offset': '70000', 'content-type': 'application/octet-stream' },
		body: new Uint8Array(130_000)
	});
	expect(await rest.json()).toEqual({ offset: 200_000 });
	server.child.kill('SIGTERM');
	const { output } = await server.ended;
	expect(output).not.toContain('request failed');
	const told = output.split('\n').filter((line) => line.includes('"request broke off"'));
	expect(told.map((line) => JSON.parse(line) as object)).toMatchObject([
		{ level: 'info', route: '/uploads/[id]', method: 'PATCH' },
		{ level: 'info', route: '/settings', method: 'POST' }
	]);
});

it('a server whose store is gone says by its status that it is not ready', async () => {
	const folder = join(home, 'not-ready');
	const server = start(build, 'serve', ['--port', '0', '--data', folder]);
	await until('the server', () => server.output().includes('is open at'));
	const origin = /http:\/\/\S+/.exec(server.output())![0];
	await until('it to be ready', async () => (await fetch(`${origin}/ready.json`)).status === 200);
	rmSync(join(folder, 'incoming'), { recursive: true });
	const answer = await fetch(`${origin}/ready.json`);
	expect(answer.status).toBe(503);
	expect(await answer.json()).toMatchObject({ ready: false, storeWritable: false, ledgerWritable: true });
	server.child.kill('SIGTERM');
	await server.ended;
});

it('answers who watches it where ledger and log cannot be read and written, whatever cookie is shown', async () => {
	const folder = join(home, 'all-in-trouble');
	const full = openSync('/dev/full', 'w');
	const entry = join(build, 'entries', 'cli', 'serve.js');
	const child = spawn(process.execPath, [entry, '--port', '0', '--data', folder], {
		stdio: ['ignore', 'pipe', full]
	});
	closeSync(full);
	const ended = new Promise((resolve) => child.once('exit', resolve));
	let output = '';
	child.stdout!.on('data', (piece) => (output += String(piece)));
	await until('the server', () => output.includes('is open at'));
	const origin = /http:\/\/\S+/.exec(output)![0];
	const ledger = new Database(join(folder, 'ledger.sqlite'));
	ledger.exec('ALTER TABLE import RENAME TO import_gone; ALTER TABLE setting RENAME TO setting_gone');
	ledger.close();
	// whose it is cannot be looked up either
	const headers = { cookie: 'person=000000000000-1' };
	for (let i = 0; i < 3; i++) {
		const lives = await fetch(`${origin}/health.json`, { headers });
		expect(lives.status).toBe(200);
		expect(await lives.json()).toMatchObject({ ledgerRead: false, trouble: 'not-known' });
		expect((await fetch(`${origin}/ready.json`, { headers })).status).toBe(503);
	}
	child.kill('SIGTERM');
	expect(await ended).toBe(0);
});

it('an unknown log level is refused in one sentence', async () => {
	const { code, output } = await start(build, 'serve', ['--port', '0', '--data', join(home, 'x')], {
		SLIP_LEDGER_LOG_LEVEL: 'loud'
	}).ended;
	expect(code).toBe(1);
	expect(output.trim().split('\n')).toHaveLength(1);
	expect(output).toContain('SLIP_LEDGER_LOG_LEVEL takes');
});
