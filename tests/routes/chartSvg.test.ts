import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inkOf, INKS } from '$lib/charts/inkOf';
import { buildAgainstBuild, CHART_NAMES, comparison } from '$lib/server';
import { chartSvg } from '../../src/routes/report/charts/chartSvg';
import { CHART_TITLES } from '../../src/routes/report/charts/chartTitles';
import { styleOfChart } from '../../src/routes/report/charts/styleOfChart';
import { formats, HOSTILE, POLICY, twoBuilds } from './twoBuilds';

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
