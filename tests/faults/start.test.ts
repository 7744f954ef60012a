import Database from 'better-sqlite3';
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runCommand, startServer } from './runCommand';

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'slip-ledger-start-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** one sentence on stderr, no stack trace, nothing on stdout, exit status 1 */
function expectRefusal(got: { status: number | null; stdout: string; stderr: string }, sentence: RegExp) {
	expect(got.stderr).toMatch(sentence);
	expect(got.stderr.trim().split('\n')).toHaveLength(1);
	expect(got.stdout).toBe('');
	expect(got.status).toBe(1);
}

describe('npm start', () => {
	it('prints one line with the address, answers there, and stops cleanly', async () => {
		const data = join(folder, 'ledger');
		const server = await startServer(data);
		expect(server.line).toMatch(/^Slip Ledger is open at http:\/\/127\.0\.0\.1:\d+ .*\n$/);
		const page = await fetch(server.origin, { headers: { accept: 'text/html' } });
		expect(page.status).toBe(200);
		expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
		expect(await server.stop()).toBe(0);
		expect(existsSync(join(data, 'ledger.sqlite'))).toBe(true);
	});

	it('refuses a busy port in one sentence and changes nothing', async () => {
		const other = createServer().listen(0, '127.0.0.1');
		await new Promise((resolve) => other.once('listening', resolve));
		const { port } = other.address() as AddressInfo;
		const data = join(folder, 'ledger');
		const got = await runCommand('serve', ['--port', String(port), '--data', data]);
		other.close();
		expectRefusal(got, new RegExp(`Port ${port} is taken`));
		expect(existsSync(data)).toBe(false);
	});

	it('refuses every address at once without the one that people open, and changes nothing', async () => {
		const data = join(folder, 'ledger');
		const got = await runCommand('serve', ['--host', '0.0.0.0', '--port', '0', '--data', data]);
		expectRefusal(got, /every address of this machine.*--address http/);
		expect(existsSync(data)).toBe(false);
	});

	it('refuses an address other than loopback in one sentence while no owner has a password', async () => {
		const data = join(folder, 'ledger');
		const reached = ['--host', '0.0.0.0', '--address', 'http://192.0.2.2:4710'];
		const got = await runCommand('serve', [...reached, '--port', '0', '--data', data]);
		expectRefusal(got, /password/);
	});

	it('refuses a folder that it cannot write to in one sentence', async () => {
		writeFileSync(join(folder, 'a-file'), 'not a folder');
		const got = await runCommand('serve', ['--port', '0', '--data', join(folder, 'a-file', 'ledger')]);
		expectRefusal(got, /a-file/);
		expect(readdirSync(folder)).toEqual(['a-file']);
	});

	it('refuses a ledger from a newer version in one sentence and leaves it as it is', async () => {
		const file = join(folder, 'ledger.sqlite');
		const newer = new Database(file);
		newer.pragma('user_version = 9999');
		newer.close();
		const got = await runCommand('serve', ['--port', '0', '--data', folder]);
		expectRefusal(got, /newer/);
		const after = new Database(file, { readonly: true });
		expect(after.pragma('user_version', { simple: true })).toBe(9999);
		after.close();
	});

	it.each([
		['--port', 'eighty'],
		['--port', '70000'],
		['--colour', 'red']
	])('refuses the setting %s %s in one sentence', async (flag, value) => {
		expectRefusal(
			await runCommand('serve', [flag, value, '--data', join(folder, 'ledger')]),
			new RegExp(flag === '--port' ? value : flag)
		);
	});

	it('refuses requests that name another host, so that a foreign page cannot reach the ledger', async () => {
		const server = await startServer(join(folder, 'ledger'));
		const { get } = await import('node:http');
		const status = await new Promise((resolve) =>
			get(`${server.origin}/`, { headers: { host: 'ledger.example' } }, (answer) => {
				answer.resume();
				resolve(answer.statusCode);
			})
		);
		await server.stop();
		expect([403, 421]).toContain(status);
	});
});
