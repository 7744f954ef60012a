import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { project, runCommand } from './runCommand';

const ride = join(project, 'sample-rides/2026-05-10-w1-r2.fit');
let folder: string;
beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'slip-ledger-slips-'))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Printed {
	file: string;
	startedAt: string;
	totalKm: number;
	observedKm: number;
	drivenKm: number;
	observed: [number, number][];
	warnings: unknown[];
	events: { startS: number; endS: number; kind: string; gear: string | null; confidence: number }[];
}

describe('npm run slips', () => {
	it('prints the slips of a file as the one JSON object that other programs may rely on', async () => {
		const got = await runCommand('slips', [ride, '--json']);
		expect(got.status).toBe(0);
		const printed = JSON.parse(got.stdout) as Printed;
		expect(Object.keys(printed)).toEqual([
			'file',
			'startedAt',
			'totalKm',
			'observedKm',
			'drivenKm',
			'observed',
			'warnings',
			'events'
		]);
		expect(printed.startedAt).toMatch(/^2026-05-10T\d\d:\d\d:\d\d/);
		expect(printed.totalKm).toBeGreaterThan(40);
		expect(printed.observedKm).toBeLessThan(printed.totalKm);
		expect(printed.observed.length).toBeGreaterThan(0);
		for (const [from, to] of printed.observed) expect(to).toBeGreaterThan(from);
		expect(printed.events.length).toBeGreaterThan(0);
		for (const event of printed.events) {
			expect(Object.keys(event).slice(0, 7)).toEqual([
				'startS',
				'endS',
				'kind',
				'overrunDeg',
				'hubTorqueNm',
				'gear',
				'confidence'
			]);
			expect(event.endS).toBeGreaterThanOrEqual(event.startS);
			expect(event.confidence).toBeGreaterThan(0);
			expect(event.confidence).toBeLessThanOrEqual(1);
		}
	});

	it('prints a table that never reads as "no slips" and carries the caution', async () => {
		const got = await runCommand('slips', [ride]);
		expect(got.status).toBe(0);
		expect(got.stdout).toMatch(/on the \d+ % of this ride that could have shown one/);
		expect(got.stdout).toMatch(/Any slip that is felt ends the test/);
	});

	it('names the gears by the teeth of the bike that is given', async () => {
		const { chainrings, cassette } = JSON.parse(
			readFileSync(join(project, 'sample-rides/truth.json'), 'utf8')
		)['2026-05-10-w1-r2'];
		const bike = join(folder, 'bike.json');
		writeFileSync(bike, JSON.stringify({ chainrings, cassette }));
		const got = await runCommand('slips', [ride, '--json', '--bike', bike]);
		expect(got.status).toBe(0);
		const gears = (JSON.parse(got.stdout) as Printed).events.map((event) => event.gear);
		expect(gears.some((gear) => /^\d+\/\d+$/.test(gear ?? ''))).toBe(true);
	});

	it('refuses a bike file that it does not understand and names the field', async () => {
		const bike = join(folder, 'wrong.json');
		writeFileSync(bike, JSON.stringify({ circumferenceM: 'two metres' }));
		const got = await runCommand('slips', [ride, '--bike', bike]);
		expect(got.status).toBe(1);
		expect(got.stderr).toContain('circumferenceM');
	});

	it.each([
		['no ride', 'GIF89a, not a ride', /not-a-ride-file/],
		['an empty file', '', /not-a-ride-file|no-records/]
	])('refuses %s with a sentence on stderr and exit status 1', async (_title, content, sentence) => {
		const file = join(folder, 'broken.fit');
		writeFileSync(file, content);
		const got = await runCommand('slips', [file, '--json']);
		expect(got.status).toBe(1);
		expect(got.stdout).toBe('');
		expect(got.stderr).toMatch(sentence);
		expect(got.stderr).not.toMatch(/ at .*:\d+:\d+/);
	});

	it('reads what is whole of a cut-off file and says what was lost', async () => {
		const file = join(folder, 'cut.fit');
		const bytes = readFileSync(ride);
		writeFileSync(file, bytes.subarray(0, Math.floor(bytes.length / 2)));
		const got = await runCommand('slips', [file, '--json']);
		expect(got.status).toBe(0);
		const printed = JSON.parse(got.stdout) as Printed;
		expect(printed.totalKm).toBeGreaterThan(10);
		expect(JSON.stringify(printed.warnings)).toMatch(/lost|missing|cut/i);
	});

	it.each([
		['a file that is not there', () => join(folder, 'nowhere.fit'), /^There is no file .*nowhere\.fit\.$/m],
		['a folder', () => folder, /is a folder/]
	])('says in a sentence what is wrong with %s', async (_title, path, sentence) => {
		const got = await runCommand('slips', [path(), '--json']);
		expect(got.status).toBe(1);
		expect(got.stdout).toBe('');
		expect(got.stderr).toMatch(sentence);
	});

	it('names what it did not understand', async () => {
		const got = await runCommand('slips', [ride, '--fast']);
		expect(got.status).toBe(1);
		expect(got.stderr).toContain('--fast');
	});
});
