import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
	incidentsOfBuild,
	installExample,
	listSpacers,
	programmeRows,
	removeExample,
	stackPage,
	stockSpacers,
	listWheels,
	wearOfWheel
} from '$lib/server';
import { addRide, freshFolder, freshLedger, HOUR_MS, rowsOf } from './testLedger';

const SAMPLE = join(import.meta.dirname, '../../sample-rides');

/** the example workshop as it ships, without its rides */
beforeEach(() => {
	const folder = join(freshFolder(), 'sample');
	mkdirSync(folder);
	const programme = JSON.parse(readFileSync(join(SAMPLE, 'programme.json'), 'utf8')) as object;
	writeFileSync(join(folder, 'programme.json'), JSON.stringify({ ...programme, rides: [] }));
	cpSync(join(SAMPLE, 'workshop'), join(folder, 'workshop'), { recursive: true });
	process.env.SLIP_LEDGER_EXAMPLE = folder;
});
afterEach(() => {
	delete process.env.SLIP_LEDGER_EXAMPLE;
});

async function installed() {
	const test = freshLedger();
	test.clock.ms = Date.UTC(2026, 10, 25);
	await installExample(test.ledger, test.actor);
	const build = (name: string) => programmeRows(test.ledger).find((row) => row.name === name)!;
	return { ...test, build };
}

describe('the example workshop', () => {
	it('has one stack on two freehub variants: one measured and sound, one that only may be', async () => {
		const { ledger, build } = await installed();
		const [first, second] = stackPage(ledger, build('Retrofit').id).stacks;
		expect(first.sums.total.measuredMm).toBeCloseTo(142, 9);
		expect(first.warnings).toEqual([]);
		expect(first.sums.endFloat?.measuredMm).toBeCloseTo(0.02, 9);
		expect(second.spacers?.choice?.spacers).toEqual([
			{ thicknessMm: 1, count: 1 },
			{ thicknessMm: 0.5, count: 1 },
			{ thicknessMm: 0.2, count: 1 }
		]);
		expect(second.rim.shiftMm).toBeCloseTo(0.84, 9);
		expect(second.warnings).toContainEqual(
			expect.objectContaining({ code: 'bearing clamped', certain: false })
		);
	});

	it('has five inspections that make a wear line with a distance to the limit, and one without', async () => {
		const test = await installed();
		const wheel = listWheels(test.ledger).find(({ name }) => name === 'Wheel 1')!;
		for (const day of ['2026-05-17', '2026-05-24', '2026-05-30', '2026-06-08'])
			await addRide(
				test,
				{ startedAtMs: Date.parse(`${day}T07:00:00Z`), durationS: (2 * HOUR_MS) / 1000, totalM: 48_000 },
				{ wheelId: wheel.id }
			);
		const wear = wearOfWheel(test.ledger, wheel.id);
		const height = wear.find(({ kind }) => kind === 'tooth height')!;
		expect(height.points.map(({ distanceM }) => distanceM)).toEqual([0, 48_000, 96_000, 144_000, 192_000]);
		expect(height.limitReached).toMatchObject({ kind: 'between' });
		expect(height.limitReached!.atM!).toBeGreaterThan(300_000);
		const force = wear.find(({ kind }) => kind === 'spring force')!;
		expect(force.limitReached!.upperM).toBeNull();
	});

	it('has one incident that was shown to be no slip and one that is open', async () => {
		const { ledger, build } = await installed();
		expect(build('Original').incidents).toMatchObject({ open: 0, counted: 0, apart: 1 });
		expect(build('Prototype 1').incidents).toMatchObject({ open: 1, counted: 1, apart: 0 });
		expect(incidentsOfBuild(ledger, build('Prototype 1').id)).toMatchObject([
			{ reporter: 'R3', severity: 'nearly fell', counts: true }
		]);
	});

	it('leaves a drawer of the workshop as it is, and goes as a whole', async () => {
		const test = freshLedger();
		test.clock.ms = Date.UTC(2026, 10, 25);
		stockSpacers(test.ledger, test.actor, { thicknessMm: 0.25, count: 1 }, null);
		await installExample(test.ledger, test.actor);
		expect(listSpacers(test.ledger).find(({ thicknessMm }) => thicknessMm === 0.25)).toMatchObject({
			count: 1,
			example: 0
		});
		removeExample(test.ledger, test.actor);
		expect(listSpacers(test.ledger).map(({ thicknessMm }) => thicknessMm)).toEqual([0.25]);
		for (const table of ['hub_stack', 'hub_stack_element', 'inspection', 'inspection_value', 'incident'])
			expect(rowsOf(test.ledger, `SELECT 1 FROM ${table}`)).toEqual([]);
		await installExample(test.ledger, test.actor);
	});
});
