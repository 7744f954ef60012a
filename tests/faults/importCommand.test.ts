import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openLedger } from '$lib/server';
import { builtProgram, smallRides, start } from './program';

let build: string;
let folder: string;
let rides: string[];

beforeAll(async () => {
	build = await builtProgram();
	rides = smallRides(2);
});
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-import-'));
	mkdirSync(join(folder, 'rides', 'deeper'), { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: string[]) => start(build, 'import', ['--data', join(folder, 'data'), ...args]).ended;

describe('the import command', () => {
	it('takes a folder with all below it, prints one line a file and ends with code 0', async () => {
		copyFileSync(rides[0], join(folder, 'rides', 'B.FIT'));
		copyFileSync(rides[1], join(folder, 'rides', 'deeper', 'a.fit'));
		writeFileSync(join(folder, 'rides', 'notes.txt'), 'not a ride');
		writeFileSync(join(folder, 'rides', '.hidden.fit'), 'not a ride');
		const { code, output } = await run(join(folder, 'rides'));
		const lines = output.trim().split('\n');
		expect(lines).toHaveLength(2);
		expect(lines[0]).toMatch(/B\.FIT: ride 1, \d+\.\d km\. /);
		expect(lines[1]).toMatch(/a\.fit: ride 2, \d+\.\d km\. .*Which wheel was ridden\?/);
		expect(code).toBe(0);
	});

	it('says that a file is in the ledger already, which is no failure', async () => {
		await run(rides[0]);
		const { code, output } = await run(rides[0]);
		expect(output).toContain('in the ledger already (ride 1), counted once');
		expect(code).toBe(0);
	});

	it('ends with code 1 when a file was refused, and takes the others', async () => {
		const bad = join(folder, 'bad.fit');
		writeFileSync(bad, 'no ride at all');
		const { code, output } = await run(bad, rides[0]);
		expect(output).toMatch(/bad\.fit: refused: .+\./);
		expect(output).toContain(`${basename(rides[0])}: ride 1`);
		expect(code).toBe(1);
	});

	it('keeps to one line, and to plain characters, for a file with a strange name', async () => {
		copyFileSync(rides[0], join(folder, 'rides', 'a\u001b[31m\nb.fit'));
		const { output } = await run(join(folder, 'rides'));
		expect(output.trim().split('\n')).toHaveLength(1);
		expect(output).toContain('a?[31m?b.fit: ride 1');
	});

	it('writes in the name that was given, else as the owner', async () => {
		await run(rides[0], '--as', 'Kim');
		await run(rides[1]);
		const ledger = openLedger(join(folder, 'data'), { migrate: false });
		const people = ledger.database.prepare('SELECT name, role FROM person').all();
		expect(people).toEqual([{ name: 'Kim', role: 'owner' }]);
		ledger.close();
	});

	it.each([
		[[], 'Usage'],
		[['/nowhere/at/all'], 'There is no file or folder'],
		[['--what', 'x'], '"--what" is no flag'],
		[['.', '--data', '/dev/null/x'], 'cannot be used for the ledger']
	])('refuses %j in one sentence', async (args, sentence) => {
		const { code, output } = await run(...args);
		expect(code).toBe(1);
		expect(output).toContain(sentence);
		expect(output.trim().split('\n')).toHaveLength(1);
	});
});
