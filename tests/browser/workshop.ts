import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { findChromium } from './findChromium.mjs';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const START_WITHIN_MS = 110_000;

/** One page size and colour scheme of a test. */
export interface Screen {
	readonly width: number;
	readonly height: number;
	readonly colorScheme?: 'light' | 'dark';
	/** device pixels a CSS pixel */
	readonly density?: number;
}
export const DESK: Screen = { width: 1440, height: 1000 };
export const PHONE: Screen = { width: 390, height: 844 };
export const TABLET: Screen = { width: 1024, height: 768 };
/** a window of 1440 px at 200 % zoom */
export const ZOOMED: Screen = { width: 720, height: 450, density: 2 };

/** The built server on a fresh ledger and a browser in front of it. */
export interface Workshop {
	readonly origin: string;
	readonly dataFolder: string;
	/** a page that remembers everything that must not happen: see `complaints` */
	open(screen: Screen): Promise<Visit>;
	close(): Promise<void>;
}

export interface Visit {
	readonly page: Page;
	readonly context: BrowserContext;
	/** console errors, content-security violations, failed requests and page errors since the start */
	readonly complaints: string[];
	/** violations that axe finds on the page as it stands, one a line */
	accessibility(): Promise<string[]>;
	/** pixels by which the page is wider than the window; 0 when it fits */
	overhang(): Promise<number>;
}

/**
 * Starts the built server as a newcomer would (`npm start` with a port and a folder of its own) and a
 * Chromium. A missing browser fails the test: it is never skipped.
 */
export async function openWorkshop(): Promise<Workshop> {
	const executablePath = findChromium();
	if (!executablePath)
		throw new Error('No Chromium: name one in CHROMIUM_PATH or install the package "chromium".');
	const dataFolder = mkdtempSync(join(tmpdir(), 'slip-ledger-browser-'));
	const server = spawn(
		process.execPath,
		['src/cli/run.mjs', 'serve', '--port', '0', '--host', '127.0.0.1', '--data', join(dataFolder, 'ledger')],
		{
			cwd: PROJECT,
			stdio: ['ignore', 'pipe', 'pipe'],
			env: { ...process.env, PORT: '', SLIP_LEDGER_DATA: '' }
		}
	);
	let browser: Browser | null = null;
	try {
		const origin = await addressOf(server);
		browser = await chromium.launch({
			executablePath,
			args: [
				'--no-sandbox',
				'--disable-gpu',
				'--disable-quic',
				'--no-first-run',
				'--disable-background-networking',
				'--disable-component-update',
				'--disable-sync'
			]
		});
		const opened = browser;
		return {
			origin,
			dataFolder,
			open: (screen) => visit(opened, origin, screen),
			async close() {
				await opened.close();
				await stopped(server);
				rmSync(dataFolder, { recursive: true, force: true });
			}
		};
	} catch (error) {
		await browser?.close();
		await stopped(server);
		rmSync(dataFolder, { recursive: true, force: true });
		throw error;
	}
}

function addressOf(server: ChildProcess): Promise<string> {
	return new Promise((resolve, reject) => {
		let said = '';
		const late = setTimeout(() => reject(new Error(`The server did not start:\n${said}`)), START_WITHIN_MS);
		const hear = (bytes: Buffer) => {
			said += String(bytes);
			const address = /http:\/\/127\.0\.0\.1:\d+/.exec(said);
			if (!address) return;
			clearTimeout(late);
			resolve(address[0]);
		};
		server.stdout?.on('data', hear);
		server.stderr?.on('data', hear);
		server.once('exit', (code) => {
			clearTimeout(late);
			reject(new Error(`The server ended with ${code}:\n${said}`));
		});
	});
}

async function stopped(server: ChildProcess): Promise<void> {
	if (server.exitCode !== null || server.signalCode !== null) return;
	const ended = new Promise((resolve) => server.once('exit', resolve));
	server.kill('SIGTERM');
	const late = setTimeout(() => server.kill('SIGKILL'), 15_000);
	await ended;
	clearTimeout(late);
}

async function visit(browser: Browser, origin: string, screen: Screen): Promise<Visit> {
	const context = await browser.newContext({
		baseURL: origin,
		locale: 'en-GB',
		timezoneId: 'Europe/Berlin',
		viewport: { width: screen.width, height: screen.height },
		colorScheme: screen.colorScheme ?? 'light',
		deviceScaleFactor: screen.density ?? 1,
		reducedMotion: 'reduce'
	});
	return watch(await context.newPage(), context, origin);
}

/** Remembers of a page what must not happen, from now on. */
export function watch(page: Page, context: BrowserContext, origin: string): Visit {
	const complaints: string[] = [];
	page.on('console', (message) => {
		// a violation of the content security policy is reported as a console error as well
		if (message.type() === 'error') complaints.push(`console: ${message.text()}`);
	});
	page.on('pageerror', (error) => complaints.push(`page: ${error.message}`));
	page.on('requestfailed', (request) => {
		const why = request.failure()?.errorText ?? '';
		// leaving a page ends what it still asked for
		if (why !== 'net::ERR_ABORTED') complaints.push(`request: ${request.url()} ${why}`);
	});
	page.on('request', (request) => {
		if (!request.url().startsWith(origin) && !/^(data|blob):/.test(request.url()))
			complaints.push(`left this machine: ${request.url()}`);
	});
	return {
		page,
		context,
		complaints,
		async accessibility() {
			// as a script tag it would be stopped by the content security policy
			await page.evaluate(AXE);
			return page.evaluate(async () => {
				const { axe } = globalThis as unknown as {
					axe: {
						run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
					};
				};
				const { violations } = await axe.run();
				return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`));
			});
		},
		overhang: () =>
			page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
	};
}
