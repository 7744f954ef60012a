import { readFileSync } from 'node:fs';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { reportView, setReleaseCriteria, type ComparisonPolicy } from '$lib/server';
import { answerWords } from '../../src/routes/report/answerWords';
import { askedReport } from '../../src/routes/report/askedReport';
import { reportWords } from '../../src/routes/report/reportWords';
import { foundOnObserved } from '../../src/routes/report/foundOnObserved';
import { notShownWords } from '../../src/routes/report/notShownWords';
import Report from '../../src/routes/report/Report.svelte';
import { reportQuery } from '../../src/routes/report/reportQuery';
import { CRITERIA } from '../release/testWords';
import { formats, HOSTILE, twoBuilds } from './twoBuilds';

const FOUND = [{ rides: 'Rides of a test', found: '3/4 = 75 %' }];

function pageOf(view: ReturnType<typeof reportView>): string {
	return render(Report, {
		props: { view, query: 'before=1&after=2', workshop: 'A workshop', found: [], words: reportWords(true) }
	}).body;
}

describe('the address of a report', () => {
	const builds = [1, 2, 3].map((id) => ({ id, name: `B${id}` }));
	const asked = (query: string) => askedReport(new URLSearchParams(query), builds);

	it('names the build before and those after, with the way of counting', () => {
		expect(asked('before=1&after=3&after=2&unit=episodes&shown=confirmed')).toEqual({
			before: builds[0],
			afters: [builds[2], builds[1]],
			policy: { unit: 'episodes', shown: 'confirmed', age: 'build', detection: 'as found' }
		});
		expect(asked('')).toBeNull();
		expect(asked('before=&after=')).toBeNull();
	});

	it('is satisfied with one build where only its charts are asked for', () => {
		const alone = (query: string) => askedReport(new URLSearchParams(query), builds, true);
		expect(alone('before=1')).toMatchObject({ before: builds[0], afters: [] });
		expect(() => asked('before=1')).toThrow();
		expect(() => alone('after=1')).toThrow();
	});

	it('is read back as it was written', () => {
		const policy: ComparisonPolicy = {
			unit: 'episodes',
			shown: 'confirmed',
			age: 'pawl set',
			detection: 'corrected'
		};
		const written = reportQuery(builds[0], [builds[1], builds[2]], policy);
		expect(asked(written)).toEqual({ before: builds[0], afters: [builds[1], builds[2]], policy });
	});

	it.each([
		['before=1&after=9', 404],
		['before=1e0&after=2', 404],
		['before=__proto__&after=2', 404],
		['before=1', 400],
		['after=2', 400],
		['before=2&after=2', 400],
		['before=1&after=2&after=2', 400]
	])('refuses %s with %i and a sentence', (query, status) => {
		try {
			asked(query);
			expect.unreachable();
		} catch (refused) {
			expect(refused).toMatchObject({ status, body: { message: expect.stringMatching(/^[A-Z].*\.$/) } });
		}
	});
});

describe('the words of a report', () => {
	it('never says of no slip that there will be none, and gives the bound', async () => {
		const { report } = await twoBuilds();
		const page = pageOf(report());
		expect(report().told.builds[1].worst.pooled.count).toBe(0);
		// Garwood 1936: no event, upper two-sided 95 % limit 3.689; on 20 km 18.4 per 100 km
		expect(page).toMatch(/at most 18\.\d/);
		// the words at the end say so, to deny it
		const denied = page.replaceAll('Nothing found is never "no slips will happen"', '');
		expect(denied).not.toMatch(/no slips|>0\.0 per|without slips/i);
		expect(page).toContain('What the words mean');
		expect(page).toContain('Not looked for');
		expect(page).toContain('ends the test');
	});

	it('says that nothing can be released without criteria, and with them how many hold', async () => {
		const { ledger, actor, newId, oldId, report } = await twoBuilds();
		expect(answerWords(report(), formats).release).toContain('No criteria were set for New');
		setReleaseCriteria(ledger, actor, {
			buildId: newId,
			referenceBuildId: oldId,
			criteria: CRITERIA,
			reason: 'agreed before',
			seenVersion: null
		});
		const view = report();
		const holding = view.release.criteria!.states.filter(({ state }) => state === 'holds').length;
		expect(answerWords(view, formats).release).toContain(
			`${holding} of ${view.release.criteria!.states.length} criteria hold`
		);
		expect(pageOf(view)).toContain('Criteria and decision');
	});

	it('tells how far was not observed and how hard the new build was not ridden', async () => {
		const { report } = await twoBuilds();
		const lines = notShownWords(report(), FOUND, formats).join('\n');
		expect(lines).toContain('Of the 30.0\u00a0km that count for New, 10.0\u00a0km (33\u00a0%)');
		expect(lines).toContain('New was observed on no distance there');
		expect(lines).toContain('whose slips are known found were 3 of 4 (75\u00a0%) in "Rides of a test".');
		expect(lines).toContain('New on one wheel');
		expect(lines).toContain('is not known: no ride of a wheel known to be good yet');
	});

	it('takes how many slips were found from the benchmark, but not on rides that the detector learned from', () => {
		const line = '- observed: 61 % of the distance; of the slips of 90 degrees and more there, found';
		const written = `### A (the detector has learned from these rides)\n\n${line} 9/9 = 100 %\n\n### B\n\n${line} 3/4 = 75 %\n\n### C\n\n${line} none\n`;
		expect(foundOnObserved(written)).toEqual([{ rides: 'B', found: '3/4 = 75 %' }]);
		const shipped = new URL('../bench/detection-figures.md', import.meta.url);
		expect(foundOnObserved(readFileSync(shipped, 'utf8')).length).toBeGreaterThan(0);
	});

	it('keeps counts and distances apart, which together would read as one larger number', async () => {
		const page = pageOf((await twoBuilds()).report()).replaceAll('\u00a0', ' ');
		expect(page).toContain('1 ride, 30.0 km');
		expect(page).toMatch(/1 wheel, \w+/);
		expect(page).not.toMatch(/>\s*\d+, \d/);
	});

	it('says once, not twice, that false alarms are not known', async () => {
		const { report } = await twoBuilds();
		const lines = notShownWords(report(), FOUND, formats).join('\n');
		expect(lines.match(/no ride of a wheel known to be good yet/g)).toHaveLength(1);
		expect(lines).toContain('False alarms pull any ratio towards 1.');
	});

	it('says whether the same riders rode both builds, and that one rider is not all', async () => {
		const { report } = await twoBuilds();
		const view = report();
		const lines = (before: object, after: object, ridersTogether: number) =>
			notShownWords(
				{
					...view,
					rides: {
						...view.rides,
						riders: [
							{ build: 'Old', named: 2, without: 0, ...before },
							{ build: 'New', named: 2, without: 0, ...after }
						],
						ridersTogether
					}
				},
				FOUND,
				formats
			).join('\n');
		expect(lines({}, {}, 3)).not.toMatch(/rider only|named on rides of both/);
		expect(lines({}, { named: 1 }, 2)).toContain('By one rider only was ridden New: how other riders press');
		expect(lines({ named: 1 }, { named: 1 }, 2)).toContain('By one rider only were ridden Old and New');
		expect(lines({}, {}, 4)).toContain('No rider is named on rides of both');
		// a ride without a name may be anybody's
		expect(lines({}, { named: 1, without: 2 }, 2)).not.toContain('rider only');
	});

	it('says after a signature how the criteria stand now, and leaves nothing to decide that was decided', async () => {
		const { ledger, actor, newId, oldId, report } = await twoBuilds();
		setReleaseCriteria(ledger, actor, {
			buildId: newId,
			referenceBuildId: oldId,
			criteria: CRITERIA,
			reason: 'agreed before',
			seenVersion: null
		});
		const view = report();
		const criteria = view.release.criteria!;
		const decision = {
			decision: 'released' as const,
			reason: 'why',
			at: '2026-08-01T09:00:00Z' as typeof view.madeAt,
			criteriaVersion: 1,
			analysisVersion: 3,
			recordSha256: 'a',
			whole: true
		};
		const said = (state: typeof criteria.state, states = criteria.states) =>
			answerWords(
				{
					...view,
					release: { ...view.release, criteria: { ...criteria, state, states }, decisions: [decision] }
				},
				formats
			).release;
		const holding = criteria.states.map((one) => ({ ...one, state: 'holds' as const }));
		expect(said('all hold', holding)).toMatch(/As the rides stand now, all \d+ criteria hold\.$/);
		expect(said('not yet')).not.toMatch(/the test goes on|for an owner to decide/);
		expect(said('stopped')).toMatch(/criteria hold, and one of them fails or is out of reach\.$/);
	});

	it('marks what is invented', async () => {
		expect(pageOf((await twoBuilds('New', true)).report())).toContain('Invented example');
		expect(pageOf((await twoBuilds()).report())).not.toContain('Invented example');
	});

	it('writes a hostile name as text', async () => {
		const page = pageOf((await twoBuilds(HOSTILE)).report());
		expect(page).toContain('&lt;script>alert(1)&lt;/script>');
		expect(page).not.toContain('<script>alert');
		expect(page).not.toMatch(/ style="/);
	});
});
