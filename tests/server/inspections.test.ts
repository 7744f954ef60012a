import { describe, expect, it } from 'vitest';
import {
	correctInspection,
	createBuild,
	fitBuild,
	inspectionsOfWheel,
	inspectionView,
	peopleForWheel,
	recordInspection,
	setHardwareLimits,
	wearOfWheel,
	withdrawInspection,
	type FindingInput,
	type InspectionInput
} from '$lib/server';
import { straightLine } from '$lib/reliability/straightLine';
import { straightLinePrediction } from '$lib/reliability/straightLinePrediction';
import { addPerson } from '$lib/server/people/people';
import { addRide, freshLedger, HOUR_MS, rowsOf, START_MS, withHardware } from './testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();
const height = (...values: number[]): FindingInput => ({
	kind: 'tooth height',
	place: 'teeth 1, 9, 17',
	instrument: 'depth gauge',
	resolution: 0.01,
	values,
	wearLimit: 1.2,
	limitIs: 'lowest'
});

function withWheel() {
	const test = freshLedger();
	const { wheelId, buildId } = withHardware(test);
	const inspection = (hours: number, findings: FindingInput[]): InspectionInput => ({
		at: at(hours),
		odometerM: 120_000,
		inspectedBy: test.actor.personId,
		note: '',
		findings
	});
	return { ...test, wheelId, buildId, inspection };
}

describe('an inspection', () => {
	it('keeps each repeat, the instrument and what was on the wheel and how far it had been ridden', async () => {
		const test = withWheel();
		await addRide(test, { totalM: 30_000 });
		const words = { kind: 'witness marks', words: 'bright spot on pawl 2' };
		recordInspection(
			test.ledger,
			test.actor,
			test.wheelId,
			test.inspection(3, [height(1.5, 1.48, 1.52), words])
		);
		expect(inspectionsOfWheel(test.ledger, test.wheelId)).toMatchObject([
			{
				at: at(3),
				odometerM: 120_000,
				by: 'P1',
				build: { id: test.buildId, name: 'Old' },
				wheelM: 30_000,
				buildM: 30_000,
				findings: [
					{ kind: 'tooth height', unit: 'mm', values: [1.5, 1.48, 1.52], resolution: 0.01, wearLimit: 1.2 },
					{ kind: 'witness marks', unit: null, values: [], words: 'bright spot on pawl 2' }
				]
			}
		]);
	});

	it('at the instant of a change belongs to the build that came off', () => {
		const test = withWheel();
		const next = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		fitBuild(test.ledger, test.actor, { wheelId: test.wheelId, buildId: next, from: at(5) });
		for (const hours of [5, 6])
			recordInspection(test.ledger, test.actor, test.wheelId, test.inspection(hours, [height(1.5)]));
		expect(inspectionsOfWheel(test.ledger, test.wheelId).map(({ build }) => build?.name)).toEqual([
			'New',
			'Old'
		]);
	});

	it('is refused with the reason when something is wrong, and nothing of it is kept', () => {
		const { ledger, actor, wheelId, inspection } = withWheel();
		const wrong: [InspectionInput, RegExp][] = [
			[inspection(1, []), /at least one thing/],
			[inspection(1, [height(150)]), /tooth height is a number from 0 to 30 mm/],
			[inspection(1, [height(-1)]), /from 0 to 30/],
			[inspection(1, [height(NaN)]), /from 0 to 30/],
			[inspection(1, [{ ...height(1), resolution: 0 }]), /resolution/],
			[inspection(1, [{ ...height(1), wearLimit: 99 }]), /limit of the tooth height/],
			[inspection(1, [{ ...height(1), limitIs: null }]), /lowest or the highest/],
			[inspection(1, [{ kind: 'spring force', values: [1], unit: 'kg' }]), /measured in N/],
			[inspection(1, [{ kind: 'bearing feel', values: [1] }]), /in words/],
			[inspection(1, [{ kind: 'end float' }]), /what was measured or seen/],
			[inspection(1, [{ kind: 'colour', words: 'blue' }]), /what was looked at/],
			[inspection(1, [height(1), height(1)]), /stands twice/],
			[{ ...inspection(1, [height(1)]), inspectedBy: 99 }, /who inspected/],
			[{ ...inspection(1, [height(1)]), odometerM: -5 }, /odometer/],
			[inspection(5000, [height(1)]), /has not come yet/],
			[{ ...inspection(1, [height(1)]), at: '2026-05-04 10:00' }, /no date and time/]
		];
		for (const [input, sentence] of wrong)
			expect(() => recordInspection(ledger, actor, wheelId, input)).toThrow(sentence);
		ledger.database.prepare('UPDATE wheel SET exists_from_ms = ?').run(START_MS);
		expect(() => recordInspection(ledger, actor, wheelId, inspection(-1, [height(1)]))).toThrow(
			'exists from'
		);
		expect(rowsOf(ledger, 'SELECT 1 FROM inspection UNION ALL SELECT 1 FROM inspection_finding')).toEqual([]);
	});

	it('on a wheel of the workshop is not by a rider of the invented one, who goes with it', () => {
		const { ledger, actor, wheelId, inspection } = withWheel();
		const rider = addPerson(ledger, { name: 'R1 of the example', role: 'rider', example: true });
		const by = { ...inspection(1, [height(1)]), inspectedBy: rider.id };
		expect(() => recordInspection(ledger, actor, wheelId, by)).toThrow('Riders of the example workshop');
		expect(peopleForWheel(ledger, wheelId).map(({ code }) => code)).toEqual(['P1']);
		ledger.database.prepare('UPDATE wheel SET example = 1').run();
		expect(peopleForWheel(ledger, wheelId).map(({ code }) => code)).toEqual(['P1', 'P2']);
		recordInspection(ledger, actor, wheelId, by);
	});

	it('is corrected with a trail, by one person at a time, and withdrawn with a reason', () => {
		const { ledger, actor, wheelId, inspection } = withWheel();
		const id = recordInspection(ledger, actor, wheelId, inspection(3, [height(1.5)]));
		correctInspection(ledger, actor, id, inspection(4, [height(1.6)]), 1);
		expect(() => correctInspection(ledger, actor, id, inspection(4, [height(1.7)]), 1)).toThrow(
			'overwritten'
		);
		expect(inspectionView(ledger, wheelId, id)).toMatchObject({
			at: at(4),
			findings: [{ values: [1.6] }]
		});
		const [{ detail }] = rowsOf(ledger, "SELECT detail FROM trail WHERE action = 'corrected'");
		expect(JSON.parse(String(detail))).toMatchObject({
			before: { at: at(3), findings: [{ values: [1.5] }] },
			after: { at: at(4), findings: [{ values: [1.6] }] }
		});
		withdrawInspection(ledger, actor, id, 'another wheel');
		expect(inspectionsOfWheel(ledger, wheelId)).toEqual([]);
		expect(inspectionView(ledger, wheelId, id)).toMatchObject({ withdrawnReason: 'another wheel' });
		expect(() => correctInspection(ledger, actor, id, inspection(4, [height(1)]), 2)).toThrow('withdrawn');
		expect(inspectionView(ledger, wheelId, 99)).toBeNull();
		expect(inspectionView(ledger, wheelId + 99, id)).toBeNull();
	});
});

describe('wear over distance', () => {
	/** an inspection after each ride of 100 km */
	async function worn(values: readonly number[]) {
		const test = withWheel();
		for (const [index, value] of values.entries()) {
			const day = 24 * HOUR_MS * index;
			await addRide(test, { startedAtMs: START_MS + day, totalM: 100_000 });
			recordInspection(
				test.ledger,
				test.actor,
				test.wheelId,
				test.inspection(24 * index + 5, [height(value)])
			);
		}
		return test;
	}

	it('has no line with three points, and one with four', async () => {
		const test = await worn([1.5, 1.45, 1.42]);
		expect(wearOfWheel(test.ledger, test.wheelId)).toMatchObject([
			{
				kind: 'tooth height',
				unit: 'mm',
				line: null,
				limitReached: null,
				limit: { value: 1.2, is: 'lowest' }
			}
		]);
		const more = await worn([1.5, 1.45, 1.41, 1.35]);
		const [wear] = wearOfWheel(more.ledger, more.wheelId);
		expect(wear.points.map(({ distanceM }) => distanceM)).toEqual([1e5, 2e5, 3e5, 4e5]);
		// by hand: slope of 1.5, 1.45, 1.41, 1.35 at 1..4 is (3 x -0.15 + 1 x -0.04) / 10 a 100 km
		expect(wear.line?.slopePerThousandKm).toBeCloseTo(-0.49, 9);
		// residuals 1, 2, 7, 4 thousandths: sd 0.00592, over the root of 5: 0.00265, times t(0.975, 2) = 4.3027
		expect(wear.line?.slopeLowerPerThousandKm).toBeCloseTo(-0.49 - 0.1138, 3);
		expect(wear.line?.slopeUpperPerThousandKm).toBeCloseTo(-0.49 + 0.1138, 3);
		expect(wear.reachedM).toBe(4e5);
	});

	it('reaches the limit with limits of the distance, or says that they are open', async () => {
		const steady = await worn([1.5, 1.45, 1.4, 1.35, 1.301]);
		const reached = wearOfWheel(steady.ledger, steady.wheelId)[0].limitReached!;
		expect(reached.kind).toBe('between');
		expect(reached.atM! / 1e5).toBeCloseTo(7, 0);
		expect(reached.lowerM!).toBeLessThan(reached.atM!);
		expect(reached.upperM!).toBeGreaterThan(reached.atM!);
		const scattered = await worn([1.5, 1.4, 1.55, 1.38, 1.49]);
		const open = wearOfWheel(scattered.ledger, scattered.wheelId)[0].limitReached!;
		expect(open.kind).not.toBe('between');
		expect(open.upperM).toBeNull();
	});

	it('looks ahead also where scatter leans away from the limit, and says when the line heads away', async () => {
		const leaning = await worn([1.5, 1.53, 1.49, 1.54, 1.52]);
		const open = wearOfWheel(leaning.ledger, leaning.wheelId)[0].limitReached!;
		expect(open).toMatchObject({ kind: 'open', atM: null, upperM: null });
		expect(open.lowerM!).toBeGreaterThan(500_000);
		const rising = await worn([1.4, 1.45, 1.5, 1.55, 1.601]);
		expect(wearOfWheel(rising.ledger, rising.wheelId)[0].limitReached).toMatchObject({
			kind: 'away',
			lowerM: null
		});
	});

	it("has at the earliest distance its limit within the line's own limits, and not before", async () => {
		const { ledger, wheelId } = await worn([1.5, 1.46, 1.43, 1.36, 1.34]);
		const { limitReached, points } = wearOfWheel(ledger, wheelId)[0];
		const line = straightLine(points.map(({ distanceM, mean }) => ({ x: distanceM / 1000, y: mean })))!;
		const at = (metres: number) => straightLinePrediction(line, metres / 1000, 0.95);
		expect(at(limitReached!.lowerM!).lineLower).toBeCloseTo(1.2, 9);
		expect(at(limitReached!.lowerM! - 1000).lineLower).toBeGreaterThan(1.2);
		expect(at(limitReached!.upperM!).lineUpper).toBeCloseTo(1.2, 9);
	});

	it('leaves what was measured before the run-in out of the line', async () => {
		const test = await worn([1.8, 1.5, 1.45, 1.4, 1.35]);
		setHardwareLimits(test.ledger, test.actor, { runInM: 150_000 });
		const [wear] = wearOfWheel(test.ledger, test.wheelId);
		expect(wear.points.map(({ beforeRunIn }) => beforeRunIn)).toEqual([true, false, false, false, false]);
		expect(wear.line?.points).toBe(4);
		expect(wear.line?.slopePerThousandKm).toBeCloseTo(-0.5, 9);
	});

	it('counts distance without a recording, and says that the newest measurement is beyond the limit', async () => {
		const test = await worn([1.5, 1.15]);
		test.ledger.database
			.prepare(
				'INSERT INTO unlogged_distance (wheel_id, at_ms, distance_m, by_id, created_ms) VALUES (?, ?, 7000, ?, 0)'
			)
			.run(test.wheelId, START_MS + 10 * HOUR_MS, test.actor.personId);
		const [wear] = wearOfWheel(test.ledger, test.wheelId);
		expect(wear.points.map(({ distanceM }) => distanceM)).toEqual([100_000, 207_000]);
		expect(wear.beyondLimit).toBe(true);
	});

	it('keeps places, builds and units apart', async () => {
		const test = await worn([1.5]);
		recordInspection(
			test.ledger,
			test.actor,
			test.wheelId,
			test.inspection(7, [{ ...height(1.4), place: 'TEETH 1, 9, 17' }])
		);
		recordInspection(
			test.ledger,
			test.actor,
			test.wheelId,
			test.inspection(8, [{ ...height(1.4), place: 'teeth 2' }])
		);
		expect(
			wearOfWheel(test.ledger, test.wheelId)
				.map(({ points }) => points.length)
				.sort()
		).toEqual([1, 2]);
	});
});
