import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { pageWeights, type PageWeight } from '../browser/pageWeight';
import { DESK, openWorkshop } from '../browser/workshop';

/**
 * What each page costs at a first visit, in a browser without a cache, on the example workshop: script (gzipped)
 * and time to the first content. Writes the figures beside this file.
 */
const FIGURES = fileURLToPath(new URL('page-load-figures.md', import.meta.url));
const PATHS = [
	...['/', '/rides', '/rides/3', '/answers', '/wheels', '/wheels/1', '/wheels/1/inspections', '/builds'],
	...['/builds/1', '/builds/3/release', '/compare', '/report?before=1&after=3', '/parts/1', '/people'],
	...['/settings', '/help', '/words', '/recording', '/method']
];
const ROUNDS = 5;

const workshop = await openWorkshop();
try {
	const { page, context } = await workshop.open(DESK);
	await page.goto('/welcome');
	await page.getByLabel('Your name').fill('Ada Nowhere');
	await page.getByRole('button', { name: 'Go on' }).click();
	await page.getByRole('button', { name: 'Set up the example' }).click();
	await page.getByRole('heading', { name: 'Programme' }).waitFor();
	await page.getByText('The example workshop is being read').waitFor({ state: 'hidden', timeout: 300_000 });
	const options = { baseURL: workshop.origin, storageState: await context.storageState() };
	const rounds: PageWeight[][] = [];
	for (let round = 0; round < ROUNDS; round++)
		rounds.push(await pageWeights(context.browser()!, options, PATHS));
	const rows = PATHS.map((path, i) => {
		const paints = rounds.map((weights) => weights[i].firstPaintMs).sort((a, b) => a - b);
		const kilobytes = rounds[0][i].scriptBytes / 1024;
		return `| ${path} | ${kilobytes.toFixed(1)} | ${paints.map((ms) => Math.round(ms)).join(', ')} |`;
	});
	const text = [
		'### Pages at a first visit',
		'',
		`\`npm run bench:pages\`: the example workshop, headless Chromium, nothing cached, ${cpus().length} cores that also`,
		`run the server. Script gzipped (wanted: at most 90 KB), first content on screen in ms of ${ROUNDS} visits (wanted: 1000).`,
		'',
		'| page | script, KB | first content, ms |',
		'|---|---|---|',
		...rows,
		''
	].join('\n');
	console.log(text);
	writeFileSync(FIGURES, text);
} finally {
	await workshop.close();
}
