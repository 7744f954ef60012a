import { describe, expect, it } from 'vitest';
import { plannerView, type CriteriaVersion, type CriterionState, type ReleaseCriteria } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { criteriaFields } from '../../src/routes/builds/[id]/release/criteriaFields';
import { criteriaFromForm } from '../../src/routes/builds/[id]/release/criteriaForm';
import { criterionPlace } from '../../src/routes/builds/[id]/release/criterionPlace';
import { criteriaWords } from '../../src/routes/builds/[id]/release/criteriaWords';
import { standingHeading } from '../../src/routes/builds/[id]/release/standingHeading';
import { weeksWords } from '../../src/routes/builds/[id]/release/weeksWords';
import { CRITERIA } from '../release/testWords';

const NOTHING = { ratePerThousandKm: null, confidencePercent: null, slipsAllowed: null, wheels: null };
const PLANNER = plannerView(NOTHING, {
	observedMPerWeek: 0,
	observedShare: 0,
	slipsBehindOne: null,
	wheels: 0
});
const SEQUENTIAL: ReleaseCriteria = {
	...CRITERIA,
	plan: { kind: 'sequential', goodPerThousandKm: 0.5, riskOfFailingGood: 0.1, longestObservedM: 4_500_000 },
	expectedRatioAtMost: null,
	plannedLifeM: null
};

function version(criteria: ReleaseCriteria): CriteriaVersion {
	return {
		id: 4,
		buildId: 9,
		version: 2,
		referenceBuildId: 3,
		criteria,
		reason: 'agreed',
		setBy: 'P1',
		setMs: 0
	};
}

function formOf(fields: Record<string, string>): FormData {
	const form = new FormData();
	for (const [name, value] of Object.entries(fields)) form.set(name, value);
	return form;
}

describe('the form of release criteria', () => {
	it.each([
		['a fixed plan', CRITERIA],
		['a plan that may end early', SEQUENTIAL]
	])('shows %s and reads the same back', (_name, criteria) => {
		const form = formOf(criteriaFields(version(criteria), PLANNER));
		form.set('reason', ' the same again ');
		form.set('seenVersion', '2');
		expect(criteriaFromForm(form, 9)).toEqual({
			buildId: 9,
			referenceBuildId: 3,
			criteria,
			reason: 'the same again',
			seenVersion: 2
		});
	});

	it('begins with what the planner worked out', () => {
		// 10 % above 90 %: chi-square 4.605 / 2 / 5 per 1000 km = 460.5 km on one wheel
		expect(criteriaFields(null, PLANNER)).toMatchObject({ rate: '5', confidence: '90', perWheelKm: '461' });
	});

	it('takes a decimal comma, and names the field that is no number', () => {
		const fields = criteriaFields(version(CRITERIA), PLANNER);
		expect(criteriaFromForm(formOf({ ...fields, rate: '2,5' }), 9).criteria.rateAtMostPerThousandKm).toBe(
			2.5
		);
		expect(() => criteriaFromForm(formOf({ ...fields, hardTorque: 'strong' }), 9)).toThrow(
			'The torque at which the old build slipped is missing or no number.'
		);
		expect(() => criteriaFromForm(formOf({ ...fields, riders: '' }), 9)).toThrow('number of riders');
	});
});

describe('criteriaWords', () => {
	const words = (criteria: ReleaseCriteria) =>
		criteriaWords(version(criteria), 'Old', createFormats('en-GB', 'UTC'))
			.join(' ')
			.replaceAll('\u00a0', ' ');

	it('says every criterion with its figures', () => {
		const text = words(CRITERIA);
		for (const part of [
			'a confirmed slip of 360 crank degrees',
			'fewer than 2 slips per 1000 observed km at 95 % confidence',
			'500 km observed on each of 3 wheels, no slip allowed',
			'At least 2 riders',
			'Observed 20 km above 30 Nm at the hub, 100 km wet, 300 km dry.',
			'At most 0.2 times the slips that Old would have had',
			'up to 8,000 km'
		])
			expect(text).toContain(part);
	});

	it('leaves out what was not asked for', () => {
		expect(words(SEQUENTIAL)).not.toMatch(/wear|would have had/);
		expect(words(SEQUENTIAL)).toContain('a plan that may end early');
	});
});

describe('criterionPlace', () => {
	const place = (name: CriterionState['name'], stillTakes: string | null, state = 'not yet') =>
		criterionPlace({ name, state, sentence: '', stillTakes } as CriterionState, 3)?.href ?? null;

	it('leads to where a person can do what is missing', () => {
		expect(place('review', '4 events to review, 2 rider marks to answer.')).toBe('/review');
		expect(place('review', '2 rider marks to answer.')).toBe('/answers?question=laps');
		expect(place('rate', 'Review of 4 events, 321 km observed.')).toBe('/review');
		expect(place('counted against expected', 'Review of the events of the old build.')).toBe('/review');
		expect(place('bench check', 'Check and record it.')).toBe('/builds/3#state');
		expect(place('build sheet', 'Missing: measured lengths.')).toBe('/builds/3/sheet');
	});

	it('leads nowhere where only riding helps, or where nothing is left to do', () => {
		expect(place('rate', '321 km observed.')).toBeNull();
		expect(place('wheels', '101 km on Wheel 1.')).toBeNull();
		expect(place('review', null, 'holds')).toBeNull();
	});
});

describe('the words of a release', () => {
	const formats = createFormats('en-GB', 'UTC');
	const plain = (text: string) => text.replaceAll('\u00a0', ' ');
	const heading = (...states: ('holds' | 'not yet' | 'fails' | 'out of reach')[]) =>
		standingHeading(states.map((state) => ({ state })));

	it('says how many criteria hold and how many do not, and "yet" only while none has failed', () => {
		expect(heading('holds', 'holds')).toBe('Every criterion holds');
		expect(heading('holds', 'not yet')).toBe('1 of 2 criteria holds, 1 does not yet');
		expect(heading('not yet', 'not yet')).toBe('None of 2 criteria holds yet');
		expect(heading('holds', 'not yet', 'fails')).toBe(
			'1 of 3 criteria holds; by 1 of the others the build does not pass'
		);
		expect(heading('holds', 'out of reach')).toBe(
			'1 of 2 criteria holds; by the other the build does not pass'
		);
	});

	it('says what is asked of how it is ridden, and what is not', () => {
		const ridden = (change: Partial<ReleaseCriteria>) =>
			plain(criteriaWords(version({ ...CRITERIA, ...change }), 'Old', formats)[3]);
		expect(ridden({ observedMWet: 40_000, observedMDry: 0 })).toBe(
			'Observed 20 km above 30 Nm at the hub, 40 km wet. No distance is asked for dry.'
		);
		expect(ridden({ observedMWet: 0, observedMDry: 0, observedMAboveHardTorque: 0 })).toBe(
			'No distance is asked for above 30 Nm at the hub, wet, dry.'
		);
	});

	it('never takes a plan to last no weeks', () => {
		expect(weeksWords(0.3, formats)).toBe('At the pace so far it takes less than a week.');
		expect(weeksWords(1.2, formats)).toBe('At the pace so far it takes about a week.');
		expect(weeksWords(1250, formats)).toContain('about 1,250 weeks');
		expect(weeksWords(null, formats)).toContain('not known');
	});
});
