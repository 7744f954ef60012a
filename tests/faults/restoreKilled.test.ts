import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openLedger, programmeRows } from '$lib/server';
import { builtProgram, smallRides, start, storedSources } from './program';

let build: string;
let home: string;
let archive: string;
let folders = 0;

beforeAll(async () => {
	build = await builtProgram();
	home = mkdtempSync(join(tmpdir(), 'slip-ledger-restore-'));
	archive = join(home, 'ledger.zip');
	await succeeds('import', ['--data', join(home, 'first'), ...smallRides(2)]);
	await succeeds('export', ['--data', join(home, 'first'), archive, '--sources']);
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

async function succeeds(command: string, args: string[]): Promise<string> {
	const { code, output } = await start(build, command, args).ended;
	expect({ command, code, output }).toMatchObject({ command, code: 0 });
	return output;
}

const nextFolder = () => join(home, `restored-${folders++}`);

/** What the ledger in a folder counts, and which sources it has. */
function contents(folder: string) {
	const ledger = openLedger(folder, { migrate: false });
	try {
		const rides = ledger.database.prepare('SELECT * FROM ride ORDER BY id').all();
		return { rides, rows: programmeRows(ledger), sources: storedSources(folder) };
	} finally {
		ledger.close();
	}
}

describe('the commands export and restore', () => {
	it('make the same ledger in another folder, and say what they did', async () => {
		const folder = nextFolder();
		const said = await succeeds('restore', ['--data', folder, archive]);
		expect(said).toMatch(/^\d+ rows in \d+ tables, 2 files, now in /);
		expect(said).toContain('codes are the names now');
		expect(contents(folder)).toEqual(contents(join(home, 'first')));
	});

	it('never write over a file, and leave no half of one', async () => {
		const taken = join(home, 'taken.zip');
		writeFileSync(taken, 'mine');
		const { code, output } = await start(build, 'export', ['--data', join(home, 'first'), taken]).ended;
		expect([code, output]).toEqual([1, expect.stringContaining('there already')]);
		expect(readFileSync(taken, 'utf8')).toBe('mine');
		expect(existsSync(`${taken}.part`)).toBe(false);
	});

	it('write tables for a spreadsheet', async () => {
		const file = join(home, 'tables.zip');
		await succeeds('export', ['--data', join(home, 'first'), file, '--tables']);
		expect(readFileSync(file).subarray(0, 2).toString()).toBe('PK');
	});
});

describe('a restore that is killed', () => {
	it.each(['restore-read', 'restore-files'])(
		'at %s leaves an empty ledger that takes the archive again',
		async (point) => {
			const folder = nextFolder();
			const killed = await start(build, 'restore', ['--data', folder, archive], { SLIP_LEDGER_FAULT: point })
				.ended;
			expect(killed.code).not.toBe(0);
			expect(contents(folder)).toMatchObject({ rides: [], rows: [] });
			await succeeds('restore', ['--data', folder, archive]);
			expect(contents(folder)).toEqual(contents(join(home, 'first')));
		}
	);

	it('after its one step has everything', async () => {
		const folder = nextFolder();
		const killed = await start(build, 'restore', ['--data', folder, archive], {
			SLIP_LEDGER_FAULT: 'restore-done'
		}).ended;
		expect(killed.code).not.toBe(0);
		expect(contents(folder)).toEqual(contents(join(home, 'first')));
	});
});
