// What drawing a ride costs: npm run bench:draw
// The drawings of the ride's page (band, read-out, strips, ribbon; once with fan and track) on a ride of five hours
// at one value a second and of four hours at 200, in headless Chromium without a graphics processor. One movement a
// frame. Cost is processor time of the page's main thread (script, style, layout, paint, canvas), from its trace,
// so that other programs on the machine do not count. Writes tests/bench/draw-figures.md. A quick look writes nothing:
// npm run bench:draw -- "200 values" 2 (scenes with these words, so many passes).
import { writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { cpus, loadavg } from 'node:os';
import { readFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { findChromium } from '../browser/findChromium.mjs';
import { drawRide, type DrawRide } from './drawRide';
import type { DrawBench } from './drawPage/main';
import {
	frameCosts,
	frameSplit,
	KINDS,
	quantile,
	workerCosts,
	type Kind,
	type TraceEvent
} from './frameCosts';

declare const drawBench: DrawBench;

const here = fileURLToPath(new URL('.', import.meta.url));
const WANTED_MS = 8;
/** the same frames again: other programs disturb each of them at another time */
const PASSES = Number(process.argv[3] ?? 4);
const LOOK = process.argv[2] ?? '';
const ALL_SCENES = [
	{ title: '5 h, 1 value a second', name: 'five', dense: false, distance: false, folded: false },
	{ title: '5 h, along the distance', name: 'five', dense: false, distance: true, folded: false },
	{ title: '5 h, fan and track open', name: 'five', dense: false, distance: false, folded: true },
	{ title: '4 h, 200 values a second', name: 'four', dense: true, distance: false, folded: false }
];
const SCENES = ALL_SCENES.filter(({ title }) => title.includes(LOOK));
/** what frames are counted from: tasks alone, since every event that is written down costs the page time */
const TASKS = ['blink.user_timing', 'toplevel'];
/** what they are split by */
const WORK = ['blink.user_timing', 'disabled-by-default-devtools.timeline', 'devtools.timeline'];
const MOVES: { title: string; move: string; count: number; before: string[] }[] = [
	{ title: 'zoom, whole ride to seconds and back', move: 'zoom', count: 80, before: ['whole', 'start'] },
	{ title: 'move along, half of the ride shown', move: 'pan', count: 50, before: ['whole', 'closer'] },
	{
		title: 'move along, about 10 minutes shown',
		move: 'pan',
		count: 100,
		before: ['whole', ...Array<string>(5).fill('closer')]
	},
	{
		title: 'move along, under a minute shown',
		move: 'pan',
		count: 100,
		before: ['whole', ...Array<string>(9).fill('closer')]
	},
	{ title: 'read-out alone, whole ride shown', move: 'read', count: 60, before: ['whole', 'start'] }
];

const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-draw-'));
await build({
	configFile: false,
	root: join(here, 'drawPage'),
	logLevel: 'warn',
	plugins: [svelte({ configFile: false, compilerOptions: { runes: true } })],
	resolve: { alias: { $lib: fileURLToPath(new URL('../../src/lib', import.meta.url)) } },
	build: { outDir: folder, emptyOutDir: true }
});
const rides: Record<string, DrawRide> = { five: await drawRide(5), four: await drawRide(4) };
const server = createServer((request, response) => {
	const path = new URL(request.url ?? '/', 'http://bench').pathname;
	const ride = rides[path.slice(1).replace(/\.(bin|json)$/, '')];
	if (ride) {
		response.end(path.endsWith('.bin') ? ride.channels : JSON.stringify(ride.view));
		return;
	}
	const types: Record<string, string> = { '.js': 'text/javascript', '.css': 'text/css' };
	response.setHeader('content-type', types[extname(path)] ?? 'text/html');
	try {
		response.end(readFileSync(join(folder, path === '/' ? 'index.html' : path)));
	} catch {
		response.writeHead(404).end();
	}
});
await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
const browser = await chromium.launch({
	executablePath: findChromium() ?? undefined,
	args: [
		'--no-sandbox',
		'--disable-gpu',
		'--disable-quic',
		'--no-first-run',
		'--disable-background-networking'
	]
});
try {
	const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
	page.on('pageerror', (error) => console.error(error));
	await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
	const rows: string[] = [];
	const splits: string[] = [];
	const worked: number[] = [];
	const still: number[] = [];
	for (const scene of SCENES) {
		const samples = await page.evaluate((what) => drawBench.show(what), scene);
		const all: number[] = [];
		const allAside: number[] = [];
		worked.push(...(await traced(page, 'work', 40)).costs);
		still.push(...(await traced(page, 'still', 40)).costs);
		// once without counting: code that has not run yet is compiled
		for (const { move } of MOVES) await page.evaluate((name) => drawBench.frames(name, 30), move);
		for (const { title, move, count, before } of MOVES) {
			const pass = async (categories: string[]) => {
				for (const step of before) await page.evaluate((name) => drawBench.frames(name, 1), step);
				return traced(page, move, count, categories);
			};
			const passes: Traced[] = [];
			for (let i = 0; i < PASSES; i++) passes.push(await pass(TASKS));
			const costs = leastOf(passes.map((pass) => pass.costs));
			const aside = leastOf(passes.map((pass) => pass.aside));
			all.push(...costs);
			allAside.push(...aside);
			rows.push(row(scene.title, title, costs, aside));
			splits.push(splitRow(scene.title, title, [await pass(WORK), await pass(WORK)]));
		}
		rows.push(
			row(`**${scene.title}** (${(samples / 1e6).toFixed(2)} million values)`, '**all**', all, allAside)
		);
	}
	const text = figures(rows, splits, worked, still);
	console.log(text);
	if (!LOOK) writeFileSync(join(here, 'draw-figures.md'), text);
} finally {
	await browser.close();
	server.close();
	rmSync(folder, { recursive: true, force: true });
}

interface Traced {
	readonly costs: number[];
	readonly aside: number[];
	readonly walls: number[];
	readonly split: Record<Kind, number>;
}

async function traced(page: Page, move: string, count: number, categories = TASKS): Promise<Traced> {
	const session = await page.context().newCDPSession(page);
	const events: TraceEvent[] = [];
	session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
	const complete = new Promise<void>((done) => session.once('Tracing.tracingComplete', () => done()));
	await session.send('Tracing.start', {
		transferMode: 'ReportEvents',
		traceConfig: {
			includedCategories: categories,
			excludedCategories: ['*']
		}
	});
	const walls = await page.evaluate(([name, frames]) => drawBench.frames(name, frames), [
		move,
		count
	] as const);
	await session.send('Tracing.end');
	await complete;
	await session.detach();
	const costs = frameCosts(events);
	if (costs.length !== count) throw new Error(`${costs.length} frames in the trace of ${count}`);
	return { costs, aside: workerCosts(events), walls, split: frameSplit(events) };
}

/** of each frame the least of its passes */
function leastOf(passes: number[][]): number[] {
	return passes[0].map((_, frame) => Math.min(...passes.map((costs) => costs[frame])));
}

function row(scene: string, move: string, costs: number[], aside: number[]): string {
	const ms = (share: number, of = costs) => quantile(of, share).toFixed(1);
	return `| ${scene} | ${move} | ${costs.length} | ${ms(0.5)} | ${ms(0.95)} | ${ms(1)} | ${ms(0.5, aside)} | ${ms(0.95, aside)} |`;
}

/** of the passes that which was disturbed least */
function splitRow(scene: string, move: string, passes: Traced[]): string {
	const sum = ({ costs }: Traced) => costs.reduce((a, b) => a + b, 0);
	const { split } = passes.reduce((least, pass) => (sum(pass) < sum(least) ? pass : least));
	return `| ${scene} | ${move} | ${KINDS.map((kind) => split[kind].toFixed(1)).join(' | ')} |`;
}

function figures(rows: string[], splits: string[], worked: number[], still: number[]): string {
	return [
		'# What drawing a ride costs',
		'',
		`\`npm run bench:draw\`: ${cpus().length} processors, load ${loadavg()[0].toFixed(1)}, headless Chromium ${browser.version()} without a graphics`,
		`processor, 1440 px wide. Milliseconds of processor time of the page's main thread a frame (wanted: 95 of 100 within`,
		`${WANTED_MS}); the last two columns are that of the thread beside it, which paints: no part of what is wanted. A ride of the example, ridden again until it is`,
		'long enough; at 200 values a second every line has a ripple of the crank, its levels made in the page. Each movement',
		`was made ${PASSES} times; of each frame the least of them counts, since other programs slow them down unevenly. Beside them`,
		`a fixed piece of arithmetic took ${quantile(worked, 0.5).toFixed(1)} ms of processor time in the middle and ${quantile(worked, 0).toFixed(1)} ms at best: by that factor`,
		`a single pass is too high. A frame in which nothing moves costs the bench itself ${quantile(still, 0.5).toFixed(1)} ms; that is in every figure.`,
		'A movement comes when the pictures of the one before have come: a frame holds all that the page does for one.',
		'',
		'| ride | movement | frames | half within | 95 of 100 within | most | painter, half within | painter, 95 of 100 |',
		'| --- | --- | --- | --- | --- | --- | --- | --- |',
		...rows,
		'',
		'What that time is spent on: milliseconds a frame, a mean over the frames of the better of two passes of their own. To',
		'tell it apart more has to be written down, which itself costs about a millisecond a frame. "Script" is everything that',
		'the page computes; "layers" is what the browser hands on to be put together, copies of the',
		'pictures among it; "other" is its own housekeeping between them.',
		'',
		`| ride | movement | ${KINDS.join(' | ')} |`,
		`| --- | --- | ${KINDS.map(() => '---').join(' | ')} |`,
		...splits,
		''
	].join('\n');
}
