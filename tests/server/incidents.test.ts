import { describe, expect, it } from 'vitest';
import {
	closeIncident,
	correctIncident,
	createBuild,
	fitBuild,
	incidentCounts,
	incidentsOfBuild,
	incidentsOfWheel,
	programmeRows,
	reopenIncident,
	reportIncident,
	type IncidentInput
} from '$lib/server';
import { addRide, freshLedger, HOUR_MS, rowsOf, START_MS, withHardware } from './testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();
const REASON = 'the hub was opened: the chain had jumped';

function withWheel() {
	const test = freshLedger();
	const hardware = withHardware(test);
	const report = (hours: number, more: Partial<IncidentInput> = {}) =>
		reportIncident(test.ledger, test.actor, hardware.wheelId, {
			at: at(hours),
			reportedBy: null,
			what: 'slip',
			felt: 'the crank lurched forward uphill',
			severity: 'noticed',
			injured: false,
			...more
		});
	return { ...test, ...hardware, report };
}

describe('an incident', () => {
	it('counts as a slip of the build that was on the wheel, beside the rate and never in it', async () => {
		const test = withWheel();
		await addRide(test);
		const before = programmeRows(test.ledger)[0].counted;
		test.report(3);
		expect(incidentCounts(test.ledger).get(test.buildId)).toEqual({
			open: 1,
			counted: 1,
			apart: 0,
			harmed: 0,
			openWheelId: test.wheelId
		});
		expect(programmeRows(test.ledger)[0]).toMatchObject({ counted: before, incidents: { open: 1 } });
		expect(incidentsOfBuild(test.ledger, test.buildId)).toMatchObject([
			{ build: { name: 'Old' }, counts: true, closing: null, reporter: null, buildM: 30_000 }
		]);
	});

	it('that was closed as something else stays listed and counts no more; opened again it counts', () => {
		const test = withWheel();
		const id = test.report(3, { severity: 'fell', injured: true });
		expect(incidentCounts(test.ledger).get(test.buildId)?.harmed).toBe(1);
		const close = (seen: number) =>
			closeIncident(test.ledger, test.actor, id, { outcome: 'no slip of this hub', reason: REASON }, seen);
		close(1);
		expect(incidentCounts(test.ledger).get(test.buildId)).toEqual({
			open: 0,
			counted: 0,
			apart: 1,
			harmed: 0,
			openWheelId: null
		});
		expect(() => close(2)).toThrow('closed already');
		reopenIncident(test.ledger, test.actor, id, 'the chain was whole after all', 2);
		expect(incidentCounts(test.ledger).get(test.buildId)).toMatchObject({ open: 1, counted: 1 });
		expect(incidentsOfWheel(test.ledger, test.wheelId)[0]).toMatchObject({
			closing: null,
			earlierClosings: [{ outcome: 'no slip of this hub', reason: REASON, by: 'P1' }]
		});
		closeIncident(test.ledger, test.actor, id, { outcome: 'counts as a slip', reason: REASON }, 3);
		expect(incidentCounts(test.ledger).get(test.buildId)).toMatchObject({ open: 0, counted: 1, apart: 0 });
	});

	it('is not closed without what it was and a reason, nor by two people at once', () => {
		const { ledger, actor, report } = withWheel();
		const id = report(3);
		const close = (outcome: string, reason: string, seen = 1) =>
			closeIncident(ledger, actor, id, { outcome, reason }, seen);
		expect(() => close('', REASON)).toThrow('turned out');
		expect(() => close('no slip of this hub', 'no')).toThrow('reason');
		close('counts as a slip', REASON);
		expect(() => close('no slip of this hub', REASON)).toThrow('overwritten');
		expect(() => reopenIncident(ledger, actor, id, 'why not', 1)).toThrow('overwritten');
		expect(rowsOf(ledger, 'SELECT outcome FROM incident_closing')).toEqual([{ outcome: 'counts as a slip' }]);
	});

	it('is never removed, not even past the functions', () => {
		const { ledger, report } = withWheel();
		report(3);
		expect(() => ledger.database.prepare('DELETE FROM incident').run()).toThrow('never removed');
	});

	it('is refused with the reason when something is wrong, and nothing is kept', () => {
		const { ledger, report } = withWheel();
		const wrong: [Partial<IncidentInput>, RegExp][] = [
			[{ at: at(5000) }, /has not come yet/],
			[{ at: 'yesterday' }, /no date and time/],
			[{ what: 'noise' }, /what happened/],
			[{ severity: '' }, /how bad/],
			[{ felt: ' ' }, /felt is missing/],
			[{ reportedBy: 99 }, /not in the ledger/],
			[{ odometerM: 2e9 }, /odometer/]
		];
		for (const [change, sentence] of wrong) expect(() => report(1, change)).toThrow(sentence);
		ledger.database.prepare('UPDATE wheel SET exists_from_ms = ?').run(START_MS);
		expect(() => report(-1)).toThrow('exists from');
		expect(rowsOf(ledger, 'SELECT 1 FROM incident')).toEqual([]);
	});

	it('is corrected with a trail; by another date it goes over to the build that was on then', () => {
		const test = withWheel();
		const next = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		fitBuild(test.ledger, test.actor, { wheelId: test.wheelId, buildId: next, from: at(5) });
		const id = test.report(3);
		const [{ at: _, ...rest }] = incidentsOfWheel(test.ledger, test.wheelId);
		correctIncident(test.ledger, test.actor, id, { ...rest, at: at(6) }, 1);
		expect(incidentsOfBuild(test.ledger, test.buildId)).toEqual([]);
		expect(incidentCounts(test.ledger).get(next)).toMatchObject({ counted: 1 });
		expect(() => correctIncident(test.ledger, test.actor, id, { ...rest, at: at(7) }, 1)).toThrow(
			'overwritten'
		);
		expect(rowsOf(test.ledger, "SELECT 1 FROM trail WHERE action = 'corrected'")).toHaveLength(1);
	});

	it('says when a ride file covers its instant', async () => {
		const test = withWheel();
		const rideId = await addRide(test);
		test.report(0.5);
		test.report(7);
		expect(incidentsOfWheel(test.ledger, test.wheelId).map(({ coveredBy }) => coveredBy?.id ?? null)).toEqual(
			[null, rideId]
		);
	});

	it('on a wheel without a build counts for none', () => {
		const test = withWheel();
		test.report(-20);
		expect(incidentCounts(test.ledger).size).toBe(0);
		expect(incidentsOfWheel(test.ledger, test.wheelId)).toMatchObject([{ build: null, buildM: null }]);
	});
});
