import { describe, expect, it } from 'vitest';
import type { BuildRow, WidestRateView } from '$lib/server/views';
import { createFormats } from '$lib/ui/formats';
import { foundWords } from '../../src/routes/foundWords';
import { incidentWords } from '../../src/routes/incidentWords';
import { nextStep } from '../../src/routes/nextStep';
import { rateRows } from '../../src/routes/rateRows';
import { rateScaleEnd } from '../../src/routes/rateScaleEnd';

const rate = (
	count: number,
	perHundred: number | null,
	lower: number,
	upper: number | null
): WidestRateView => ({
	count,
	observedM: 100_000,
	ratePerHundredKm: perHundred,
	lowerPerHundredKm: lower,
	upperPerHundredKm: upper,
	confidence: 0.95,
	rides: 3,
	decidedBy: 'single',
	dispersion: 1,
	assumesSingleEvents: true,
	borrowedFrom: null
});
const counted = (unreviewed: number, best: WidestRateView, worst: WidestRateView) => ({
	confirmed: best.count,
	unreviewed,
	rejected: 0,
	apart: 0,
	bestCase: best,
	worstCase: worst
});
const build = (more: Partial<BuildRow>): BuildRow => ({
	id: 7,
	name: 'A build',
	description: '',
	state: 'in test',
	wheels: [{ id: 1, name: 'A wheel' }],
	rides: 3,
	totalM: 120_000,
	observedM: 100_000,
	drivenM: 110_000,
	counted: counted(0, rate(1, 1, 0.03, 5.6), rate(1, 1, 0.03, 5.6)),
	incidents: { open: 0, counted: 0, apart: 0, harmed: 0, openWheelId: null },
	example: false,
	...more
});

describe('nextStep', () => {
	it('leads from fitting to riding to reviewing to comparing', () => {
		expect(nextStep(build({ wheels: [], rides: 0 })).action).toBe('Fit it');
		expect(nextStep(build({ rides: 0, state: 'draft' })).href).toBe('/builds/7#state');
		expect(nextStep(build({ rides: 0 })).action).toBe('Upload rides');
		const open = nextStep(build({ counted: counted(2, rate(1, 1, 0, 5), rate(3, 3, 1, 9)) }));
		expect(open.sentence).toBe('2 events wait for a person to confirm or reject.');
		expect(open.href).toBe('/review');
		expect(nextStep(build({})).href).toBe('/compare');
	});

	it('says why nothing can be said when no distance was observed', () => {
		expect(nextStep(build({ observedM: 0 })).href).toBe('/method#recording');
	});
});

describe('incidents', () => {
	const formats = createFormats('en-GB', 'UTC');
	const incidents = { open: 1, counted: 3, apart: 1, harmed: 2, openWheelId: 4 };

	it('that are open come before everything but fitting the build', () => {
		const next = nextStep(build({ rides: 0, incidents }));
		expect(next.sentence).toMatch(/^1 incident was reported and not closed: open the hub before/);
		expect(next.href).toBe('/wheels/4/incidents');
		expect(nextStep(build({ wheels: [], incidents })).action).toBe('Fit it');
	});

	it('are told with those that are open, those with harm and those that count no more', () => {
		expect(incidentWords(incidents, formats)).toBe(
			'3 incidents, 1 open, 2 with a fall or injury, 1 closed as no slip'
		);
		const none = { open: 0, counted: 0, apart: 2, harmed: 0, openWheelId: null };
		expect(incidentWords(none, formats)).toBe('none counts, 2 closed as no slip');
	});
});

describe('foundWords', () => {
	const formats = createFormats('en-GB', 'UTC');
	const none = rate(0, 0, 0, 3.7);

	it('says that nothing could have been found where nothing was observed', () => {
		const unobserved = build({ observedM: 0, counted: counted(0, none, none) });
		expect(foundWords(unobserved, formats)).toBe('nothing could have been found yet');
		expect(foundWords(build({ counted: counted(0, none, none) }), formats)).toBe('none found');
	});

	it('counts what is confirmed, not reviewed and rejected', () => {
		const open = { ...counted(2, none, rate(2, 2, 0.2, 7)), rejected: 1 };
		expect(foundWords(build({ counted: open }), formats)).toBe('none confirmed, 2 not reviewed, 1 rejected');
		expect(foundWords(build({}), formats)).toBe('1 confirmed');
	});
});

describe('rateRows', () => {
	it('shows two intervals while anything is unreviewed, else one', () => {
		const open = rateRows(counted(2, rate(1, 1, 0, 5), rate(3, 3, 1, 9)));
		expect(open.map(({ label, count }) => [label, count])).toEqual([
			['unreviewed counted', 3],
			['confirmed only', 1]
		]);
		expect(rateRows(counted(0, rate(1, 1, 0, 5), rate(1, 1, 0, 5))).length).toBe(1);
	});
});

describe('rateScaleEnd', () => {
	const scale = (...rates: WidestRateView[]) =>
		rateScaleEnd(rates.map((one) => ({ counted: counted(0, one, one) })));

	it('ends at a round number that the limits fit in', () => {
		expect(scale(rate(12, 5.6, 2.9, 9.8), rate(0, 0, 0, 3.7))).toBe(10);
	});

	it('does not let one wide interval squeeze the others', () => {
		expect(scale(rate(1, 2, 0.1, 60), rate(3, 1, 0.2, 3))).toBeLessThanOrEqual(6);
	});

	it('ends at the largest upper limit where nothing was found, and at one without any', () => {
		expect(scale(rate(0, 0, 0, 3.7))).toBe(4);
		expect(scale(rate(0, null, 0, null))).toBe(1);
	});
});
