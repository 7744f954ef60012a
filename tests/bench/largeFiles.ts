// Files of full size, end to end: npm run bench:large [-- MEMBERS [DISTINCT]]
// A logger's table of 4 h at 200 Hz, then an archive of MEMBERS such tables (25 are 2 GB; stored, not packed, so that it
// is cheap to make), in pieces of 1 MB through HTTP to the built server, which is killed when half of the archive has
// come and started again. DISTINCT of the tables differ; the others are the same bytes again: they are unpacked, hashed
// and stored like the rest, but read once. Prints times, resident memory of the server and of each kind of child, and
// how long /ready.json waited meanwhile.
import {
	closeSync,
	createWriteStream,
	mkdtempSync,
	openSync,
	readdirSync,
	readFileSync,
	readSync,
	rmSync,
	statSync
} from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { ZipFile } from 'yazl';
import { startServer } from '../faults/runCommand';
import { loggerTable } from '../loggerTable';
import { chooseName } from './serverClient';

const MEMBERS = Number(process.argv[2] ?? 25);
const DISTINCT = Math.min(MEMBERS, Number(process.argv[3] ?? MEMBERS));
const PIECE_BYTES = 2 ** 20;
const TABLE = { rateHz: 200, seconds: 4 * 3600, slipsS: [3600, 7200] };

type Server = Awaited<ReturnType<typeof startServer>>;

/** largest resident memory of each kind of process so far, MB */
const most = { server: 0, unpackArchive: 0, analyseFile: 0 };
const waitsMs: number[] = [];

const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-large-'));
try {
	console.log(
		`${cpus().length} processors (${cpus()[0].model.trim()}), load ${loadavg()[0].toFixed(1)}, Node ${process.version}`
	);
	const data = join(folder, 'data');
	let server = await startServer(data);
	const cookie = await chooseName(server.origin, 'Bench');
	let watching = watch(server);
	const table = loggerTable(TABLE);
	const tablePath = join(folder, 'rig.csv');
	await pipeline(Readable.from([table]), createWriteStream(tablePath));
	await timed(
		`table of ${megabytes(table.length)} MB uploaded`,
		async () => void (await send(server, cookie, tablePath))
	);
	await timed('read into a ride', () => allRead(server, cookie));
	report();

	const zipPath = join(folder, 'rides.zip');
	await timed('archive made', () => writeArchive(zipPath, table));
	const { size } = statSync(zipPath);
	const begun = await send(server, cookie, zipPath, { until: size / 2 });
	watching.stop();
	server.child.kill('SIGKILL');
	await new Promise((ended) => server.child.once('close', ended));
	await timed('started again after the kill', async () => void (server = await startServer(data)));
	watching = watch(server);
	await timed(`second half of ${megabytes(size)} MB uploaded`, async () => {
		await send(server, cookie, zipPath, { id: begun });
	});
	await timed('unpacked', () => stageIs(server, cookie, 'unpacking'));
	await timed(`${DISTINCT} tables read`, () => allRead(server, cookie));
	watching.stop();
	report();
	const answer = await fetch(`${server.origin}/imports.json?overview`, { headers: { cookie } });
	const { lately } = (await answer.json()) as { lately: Record<string, number> };
	console.log(`of the last 24 hours: ${JSON.stringify(lately)}`);
	await server.stop();
} finally {
	rmSync(folder, { recursive: true, force: true });
}

async function timed(what: string, action: () => Promise<void>): Promise<void> {
	const begunMs = performance.now();
	await action();
	console.log(
		`${what}: ${((performance.now() - begunMs) / 1000).toFixed(1)} s (load ${loadavg()[0].toFixed(1)})`
	);
}

function report(): void {
	const { server, unpackArchive, analyseFile } = most;
	waitsMs.sort((a, b) => a - b);
	const at = (share: number) => (waitsMs[Math.floor(share * (waitsMs.length - 1))] ?? NaN).toFixed(0);
	console.log(
		`MB resident at most: server ${server.toFixed(0)}, child that unpacks ${unpackArchive.toFixed(0)}, ` +
			`child that analyses ${analyseFile.toFixed(0)}; /ready.json: middle ${at(0.5)} ms, p95 ${at(0.95)} ms`
	);
}

/** Looks at memory and asks a page a few times a second until it is stopped. */
function watch({ child, origin }: Server): { stop(): void } {
	let asking = false;
	const timer = setInterval(() => {
		for (const pid of [String(child.pid), ...childrenOf(child.pid!)]) {
			const kind = kindOf(pid, child.pid!);
			if (kind) most[kind] = Math.max(most[kind], residentMostMb(pid));
		}
		if (asking) return;
		asking = true;
		const askedMs = performance.now();
		fetch(`${origin}/ready.json`)
			.then((answer) => answer.text())
			.then(() => waitsMs.push(performance.now() - askedMs))
			.catch(() => {})
			.finally(() => (asking = false));
	}, 200);
	return { stop: () => clearInterval(timer) };
}

function childrenOf(parent: number): string[] {
	return readdirSync('/proc').filter(
		(name) => /^\d+$/.test(name) && Number(/^PPid:\s+(\d+)/m.exec(statusOf(name))?.[1]) === parent
	);
}

function kindOf(pid: string, serverPid: number): keyof typeof most | null {
	if (Number(pid) === serverPid) return 'server';
	const started = readOrNothing(`/proc/${pid}/cmdline`);
	return (['unpackArchive', 'analyseFile'] as const).find((kind) => started.includes(kind)) ?? null;
}

function statusOf(pid: string): string {
	return readOrNothing(`/proc/${pid}/status`);
}

function residentMostMb(pid: string): number {
	return Number(/^VmHWM:\s+(\d+)/m.exec(statusOf(pid))?.[1] ?? 0) / 1024;
}

/** A process may end between two looks. */
function readOrNothing(path: string): string {
	try {
		return readFileSync(path, 'utf8');
	} catch {
		return '';
	}
}

function megabytes(bytes: number): string {
	return (bytes / 2 ** 20).toFixed(0);
}

/** Tables that differ in the day that they begin with; those beyond DISTINCT are the last one again. */
async function writeArchive(path: string, table: Buffer): Promise<void> {
	const zip = new ZipFile();
	const firstRow = table.indexOf('\n') + 1;
	for (let i = 0; i < MEMBERS; i++) {
		const day = String(1 + (Math.min(i, DISTINCT - 1) % 28)).padStart(2, '0');
		const month = String(6 + Math.floor(Math.min(i, DISTINCT - 1) / 28)).padStart(2, '0');
		const head = Buffer.from(`# started_at: 2026-${month}-${day}T08:00:00Z\n`);
		const pieces = Readable.from([head, table.subarray(firstRow)]);
		zip.addReadStream(pieces, `season/rig-${i}.csv`, { compress: false });
	}
	zip.end();
	await pipeline(zip.outputStream as unknown as Readable, createWriteStream(path));
}

/** Sends a file in pieces from where the server holds it, up to a byte or to its end; gives the upload's name. */
async function send(
	{ origin }: Server,
	cookie: string,
	path: string,
	{ id, until }: { id?: string; until?: number } = {}
): Promise<string> {
	const headers = { cookie, origin };
	const { size } = statSync(path);
	const ask = async (to: string, init: RequestInit) => {
		const answer = await fetch(`${origin}/uploads${to}`, {
			...init,
			headers: { ...headers, ...init.headers }
		});
		if (!answer.ok) throw new Error(`${to}: ${answer.status} ${await answer.text()}`);
		return (await answer.json()) as { id: string; offset: number };
	};
	const name = path.split('/').at(-1);
	const named =
		id ??
		(
			await ask('', {
				method: 'POST',
				headers: { 'content-type': 'application/json' },
				body: JSON.stringify({ name, size })
			})
		).id;
	const file = openSync(path, 'r');
	const piece = Buffer.alloc(PIECE_BYTES);
	let { offset } = await ask(`/${named}`, {});
	if (id)
		console.log(`the server held ${megabytes(offset)} MB of ${megabytes(size)} when it was asked again`);
	while (offset < (until ?? size)) {
		const bytes = readSync(file, piece, 0, PIECE_BYTES, offset);
		({ offset } = await ask(`/${named}`, {
			method: 'PATCH',
			headers: { 'content-type': 'application/octet-stream', 'upload-offset': String(offset) },
			body: piece.subarray(0, bytes)
		}));
	}
	closeSync(file);
	if (until === undefined) await ask(`/${named}/finish`, { method: 'POST' });
	return named;
}

/** Waits until nothing is in this stage any more. */
async function stageIs(
	{ origin }: Server,
	cookie: string,
	...stages: ('unpacking' | 'waiting' | 'reading')[]
): Promise<void> {
	for (;;) {
		const answer = await fetch(`${origin}/imports.json?overview`, { headers: { cookie } });
		const { underWay } = (await answer.json()) as { underWay: Record<string, number> };
		if (stages.every((stage) => underWay[stage] === 0)) return;
		await new Promise((resolve) => setTimeout(resolve, 250));
	}
}

function allRead(server: Server, cookie: string): Promise<void> {
	return stageIs(server, cookie, 'unpacking', 'waiting', 'reading');
}
