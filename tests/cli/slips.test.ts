import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { analyseRide } from '$lib/slip/analyseRide';
import { readBike } from '../../src/cli/slips/readBike';
import { slipsAsJson } from '../../src/cli/slips/slipsAsJson';
import { slipsAsTable } from '../../src/cli/slips/slipsAsTable';
import { putSlip, steadyRecords, toRide } from '../slip/steadyRide';

const slipping = () => {
	const records = steadyRecords();
	putSlip(records, 600, 170);
	return analyseRide(toRide(records));
};

describe('slipsAsJson', () => {
	it('names what the command promises, in seconds and kilometres', () => {
		const json = slipsAsJson('a.fit', Date.UTC(2026, 3, 5), slipping());
		expect(Object.keys(json)).toEqual(
			expect.arrayContaining([
				'file',
				'startedAt',
				'totalKm',
				'observedKm',
				'drivenKm',
				'observed',
				'warnings',
				'events'
			])
		);
		expect(json.startedAt).toBe('2026-04-05T00:00:00.000Z');
		expect(json.events).toHaveLength(1);
		expect(json.events[0]).toMatchObject({ kind: 'slip', gear: expect.any(String) });
		expect(json.events[0].confidence).toBeGreaterThan(0);
		expect(json.observedKm).toBeLessThanOrEqual(json.totalKm);
	});
});

describe('slipsAsTable', () => {
	it('says that a felt slip ends the test, whatever was found', () => {
		expect(slipsAsTable('a.fit', slipping())).toContain('Any slip that is felt ends the test');
		expect(slipsAsTable('a.fit', analyseRide(toRide(steadyRecords())))).toContain(
			'Any slip that is felt ends the test'
		);
	});

	it('never says that there were no slips, but on which share of the ride none was found', () => {
		const text = slipsAsTable('a.fit', analyseRide(toRide(steadyRecords())));
		expect(text).toMatch(
			/No slip of the reference size was found on the (more than )?\d+ % of this ride that could have shown one\./
		);
		expect(text.toLowerCase()).not.toContain('no slips');
	});

	it('counts what the rate counts: slips of the reference size on observed stretches, no other kind', () => {
		const found = slipping();
		const [slip] = found.events;
		const large = { ...slip, observed: true, overrunCrankDeg: { value: 120, lower: 100, upper: 140 } };
		const text = (...events: (typeof slip)[]) => slipsAsTable('a.fit', { ...found, events });
		expect(text(large)).toMatch(/^1 slip of the reference size/m);
		expect(text(large, large)).toMatch(/^2 slips of the reference size/m);
		for (const other of [
			{ ...large, kind: 'failed pick-up' as const },
			{ ...large, observed: false },
			{ ...large, overrunCrankDeg: { value: 89, lower: 70, upper: 110 } }
		])
			expect(text(other)).toMatch(/^No slip of the reference size was found/m);
	});

	it('never rounds the observed share up to all or down to none of the ride', () => {
		const found = { ...slipping(), events: [], totalM: 100_000 };
		expect(slipsAsTable('a.fit', { ...found, observedM: 100 })).toContain('on the less than 1 %');
		expect(slipsAsTable('a.fit', { ...found, observedM: 99_900 })).toContain('on the more than 99 %');
	});

	it('says that a trainer ride says nothing about the hub', () => {
		const text = slipsAsTable('a.fit', analyseRide(toRide(steadyRecords(), { trainer: true })));
		expect(text).toContain('it says nothing about the hub');
	});
});

describe('readBike', () => {
	const file = (content: string) => {
		const path = join(tmpdir(), `bike-${process.pid}-${content.length}.json`);
		writeFileSync(path, content);
		return path;
	};

	it('takes a bike of which only the circumference is known', () => {
		expect(readBike(file('{"circumferenceM":2.14}'))).toEqual({ circumferenceM: 2.14 });
	});

	it('names the field that cannot be right', () => {
		expect(() => readBike(file('{"circumferenceM":21.4}'))).toThrow(/circumferenceM/);
		expect(() => readBike(file('{"speedSensor":"hub"}'))).toThrow(/speedSensor/);
		expect(() => readBike(file('{'))).toThrow(/cannot be read as JSON/);
	});
});
