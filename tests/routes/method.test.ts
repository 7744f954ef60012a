import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeRide } from '$lib/ride/decodeRide';
import { treeFacts } from '$lib/slip/model/treeFacts';
import { LEAST_REPORTED_DEG } from '$lib/slip/reportLimits';
import { workedEvent } from '$lib/slip/workedEvent';
import { benchFigures } from '../../src/routes/method/benchFigures';
import { constantsOf } from '../../src/routes/method/constantsOf';
import { allConstants, writtenFigures } from '../../src/routes/method/sourceFiles';
import { rideOf, workedRide } from '../../src/routes/method/workedRide';
import { slipSizes } from '../../src/routes/method/slipSizes';
import { workedView } from '../../src/routes/method/workedView';
import { storedRideOf, WORKED_FILE } from './storedRideOf';

const project = new URL('../../', import.meta.url).pathname;

describe('the ride that the method page works through', () => {
	it('is the first half hour of a ride of the example workshop, record by record', async () => {
		const truth = JSON.parse(readFileSync(`${project}sample-rides/truth.json`, 'utf8'));
		const bytes = new Uint8Array(readFileSync(`${project}sample-rides/${WORKED_FILE}`));
		const ride = await decodeRide(bytes, WORKED_FILE);
		expect(storedRideOf(ride, truth[WORKED_FILE.replace('.fit', '')])).toEqual(workedRide);
	});
});

describe('slipSizes', () => {
	it('tells that at the limit itself fewer than nine in ten are found, as its table does', () => {
		const { sizes, chances, atTheLimit } = slipSizes();
		const reference = sizes.findIndex(({ crankDeg }) => crankDeg === 90);
		expect(chances.find(({ limitDeg }) => limitDeg === 90)!.found[reference]).toBe(atTheLimit);
		// the page says so in words: with a model for which this is not so, the sentence has to go
		expect(atTheLimit).toBeLessThan(0.88);
	});
});

describe('workedEvent', () => {
	const worked = workedEvent(rideOf(workedRide), workedRide.bike, workedRide.truth.t0, 12);

	it('finds the slip that the simulator made, in its gear and with its angle within the limits', () => {
		const { crankDeg, gear } = workedRide.truth;
		const { event } = worked!;
		expect(event.kind).toBe('slip');
		expect(event.gear!.label).toBe(gear);
		expect(event.overrunCrankDeg.lower).toBeLessThan(crankDeg);
		expect(event.overrunCrankDeg.upper).toBeGreaterThan(crankDeg);
	});

	it('adds up to the overrun of the event: the seconds shown are the ones that made it', () => {
		const counted = worked!.seconds.filter((second) => second.counted);
		const sum = counted.reduce((deg, { gainedDeg }) => deg + gainedDeg, 0);
		expect(sum).toBeCloseTo(worked!.event.overrunCrankDeg.value, 6);
		for (const { cadenceRpm, engagedRpm, gainedDeg } of counted)
			expect(gainedDeg).toBeCloseTo(6 * (cadenceRpm - engagedRpm), 9);
		const mean = worked!.torquesNm.reduce((all, torque) => all + torque, 0) / worked!.torquesNm.length;
		expect(mean).toBeCloseTo(worked!.event.hubTorqueNm!.value, 9);
	});

	it('gives nothing where no event is reported', () => {
		expect(workedEvent(rideOf(workedRide), workedRide.bike, 100, 12)).toBeNull();
	});

	it('shows the features that were asked for, in that order, and leaves out what cannot be said', () => {
		const { features } = workedView(worked!, workedRide, ['seconds', 'no such feature', 'careful deg']);
		expect(features.map(({ name }) => name)).toEqual(['seconds', 'careful deg']);
	});
});

describe('constantsOf', () => {
	it('reads name, value, unit and the words beside a number', () => {
		const source = `/** How far it looks;\n * common practice, no source. */\nexport const LONG_REACH_S = 1_200;\nconst NEAR = 0.05;\nconst EDGES_NM = [0, 4, 8] as const;`;
		expect(constantsOf(source)).toEqual([
			{
				name: 'long reach',
				value: '1200',
				unit: 's',
				meaning: 'How far it looks; common practice, no source.'
			},
			{ name: 'near', value: '0.05', unit: '', meaning: '' },
			{ name: 'edges', value: '[0, 4, 8]', unit: 'Nm', meaning: '' }
		]);
	});

	it('finds the numbers of the program as they are', () => {
		const limits = allConstants().find(({ file }) => file === 'slip/reportLimits.ts')!;
		const least = limits.constants.find(({ name }) => name === 'least reported')!;
		expect(least).toMatchObject({ value: String(LEAST_REPORTED_DEG), unit: '°' });
		const learned = allConstants().find(({ file }) => file === 'drivetrain/learnLag.ts')!;
		expect(learned.step).toBe('learn lag');
		expect(learned.does).toMatch(/^Constant lag of speed behind cadence/);
		expect(allConstants().flatMap(({ constants }) => constants).length).toBeGreaterThan(100);
	});
});

describe('benchFigures', () => {
	it('keeps headings with their lists and leaves tables out', () => {
		const written = '# Title, version 7\n\ntext\n\n### One\n\n- a: 1\n- b: 2\n\n### Table\n\n| x |\n';
		expect(benchFigures(written)).toEqual({
			title: 'Title, version 7',
			sets: [{ name: 'One', lines: ['a: 1', 'b: 2'] }]
		});
	});

	it('finds the sets in what the benchmark wrote', () => {
		const { sets } = benchFigures(writtenFigures());
		expect(sets.map(({ name }) => name).join()).toContain('Example workshop');
		expect(sets.flatMap(({ lines }) => lines).join()).toContain('of the slips of 90 degrees');
	});
});

describe('treeFacts', () => {
	it('counts trees, branches and what they ask for', () => {
		const trees = [
			[[1, 5, 0, 1, 2], [0], [1, 7, 0, 3, 4], [1], [2]],
			[[0, 1, 0, 1, 2], [0], [1]]
		];
		expect(treeFacts({ names: ['a', 'b', 'c'], bias: 0, trees })).toEqual({
			trees: 2,
			branches: 3,
			asked: [
				{ name: 'b', branches: 2 },
				{ name: 'a', branches: 1 }
			]
		});
	});
});
