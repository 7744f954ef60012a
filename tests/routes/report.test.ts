import { readFileSync } from 'node:fs';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import {
	buildAgainstBuild,
	comparison,
	createBuild,
	fitBuild,
	recordVerdict,
	reportView,
	rideView,
	setReleaseCriteria,
	CHART_NAMES,
	type ComparisonPolicy
} from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { answerWords } from '../../src/routes/report/answerWords';
import { askedReport } from '../../src/routes/report/askedReport';
import { chartSvg } from '../../src/routes/report/charts/chartSvg';
import { CHART_TITLES } from '../../src/routes/report/charts/chartTitles';
import { inkOf, INKS } from '$lib/charts/inkOf';
import { reportWords } from '../../src/routes/report/reportWords';
import { styleOfChart } from '../../src/routes/report/charts/styleOfChart';
import { foundOnObserved } from '../../src/routes/report/foundOnObserved';
import { notShownWords } from '../../src/routes/report/notShownWords';
import Report from '../../src/routes/report/Report.svelte';
import { reportQuery } from '../../src/routes/report/reportQuery';
import { CRITERIA } from '../release/testWords';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../server/testLedger';

const POLICY: ComparisonPolicy = { unit: 'slips', shown: 'found' };
const formats = createFormats('en-GB', 'UTC');
const FOUND = [{ rides: 'Rides of a test', found: '3/4 = 75 %' }];
const HOSTILE = '<script>alert(1)</script> & "so"';

/** the old build with three confirmed slips, the new one with none */
async function twoBuilds(name = 'New', example = false) {
	const test = freshLedger();
	const { ledger, actor } = test;
	const { wheelId, buildId: oldId } = withHardware(test);
	const newId = createBuild(ledger, actor, { name, description: '' }, { example });
	fitBuild(ledger, actor, { wheelId, buildId: newId, from: new Date(START_MS + 12 * HOUR_MS).toISOString() });
	const oldRide = await addRide(test, { events: [slipAt(100), slipAt(200), slipAt(300)] });
	for (const { id } of rideView(ledger, oldRide)!.eventList)
		recordVerdict(ledger, actor, id, { verdict: 'confirmed' });
	await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS });
	const builds = [
		{ id: oldId, name: 'Old' },
		{ id: newId, name }
	];
	const report = () => reportView(ledger, oldId, newId, POLICY, formats);
	return { ...test, oldId, newId, builds, report };
}

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

describe('a chart as a drawing of its own', () => {
	it.each(CHART_NAMES)('draws %s with plain inks, a title and no name that runs', async (name) => {
		const { ledger, builds } = await twoBuilds(HOSTILE);
		const { lines } = comparison(
			ledger,
			builds.map(({ id }) => id)
		);
		const svg = chartSvg(name, buildAgainstBuild(ledger, builds, POLICY), lines, formats);
		expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 720 \d+"/);
		expect(svg).toContain('<title>');
		expect(svg).not.toContain('var(--');
		expect(svg).not.toContain('<script');
		expect(svg).not.toContain('<!--');
		expect(svg.match(/<svg/g)).toHaveLength(1);
		// every class that is drawn has its rule
		for (const [scope] of svg.matchAll(/svelte-[a-z0-9]+/g))
			expect(svg.split('</style>')[0]).toContain(`.${scope}`);
	});

	it('keeps a number at the end of a line clear of other lines, with marks of slips or without', async () => {
		const { ledger, builds } = await twoBuilds();
		const { lines } = comparison(
			ledger,
			builds.map(({ id }) => id)
		);
		const told = buildAgainstBuild(ledger, builds, POLICY);
		const [line] = lines;
		const slipsOf = (count: number) =>
			Array.from({ length: count }, (_, place) => ({
				atM: 10 * place,
				count: place + 1,
				eventId: place,
				rideId: 1,
				confirmed: true
			}));
		for (const count of [0, 1, 400, 401]) {
			const svg = chartSvg('slips-over-distance', told, [{ ...line, slips: slipsOf(count) }], formats);
			const [, scope] = /class="number over (svelte-[a-z0-9]+)"/.exec(svg)!;
			expect(svg, String(count)).toMatch(new RegExp(`\\.over\\.${scope}\\{paint-order: stroke`));
		}
	});

	it('binds the rules of a component to its own elements and leaves those of the page out', () => {
		const source =
			'<svg/><style>\nsvg { display: block; }\n/* why */\npath,\n.a path { stroke: var(--ink); }\n</style>';
		expect(styleOfChart(source, 'svelte-x1')).toBe(
			`path.svelte-x1,.a path.svelte-x1{stroke: ${inkOf('ink')};}`
		);
		expect(styleOfChart('<style>svg :global(.end) { text-anchor: end; }</style>', 's')).toBe(
			'.end{text-anchor: end;}'
		);
		expect(() => styleOfChart('<style>p { fill: var(--none); }</style>', 's')).toThrow('no ink "none"');
	});

	it.each(INKS)('prints the ink %s as pages do', (name) => {
		const tokens = readFileSync(new URL('../../src/lib/ui/tokens.css', import.meta.url), 'utf8');
		const written = new RegExp(`--${name}:\\s*([^;]+);`);
		const found = written.exec(tokens.slice(tokens.indexOf('@media print'))) ?? written.exec(tokens);
		expect(inkOf(name)).toBe(found?.[1]);
	});

	it('has a title for every chart', () => {
		expect(CHART_TITLES.map(({ name }) => name).sort()).toEqual([...CHART_NAMES].sort());
	});
});
