// Pictures of every control in every state, to be looked at in review: npm run design-shots [FOLDER]
// They are taken on the development server, which alone shows the page.
import { mkdirSync, mkdtempSync, realpathSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { createServer } from 'vite';
import { findChromium } from './findChromium.mjs';

const WIDTHS = [1440, 390];
/** what the page marks by data-look, as the browser is told to show it */
const LOOKS: Readonly<Record<string, string[]>> = {
	hover: ['hover'],
	focus: ['focus', 'focus-visible'],
	active: ['hover', 'active']
};

const folder = resolve(process.argv[2] ?? 'build/design-shots');
mkdirSync(folder, { recursive: true });
const data = mkdtempSync(join(tmpdir(), 'design-shots-'));
process.env.SLIP_LEDGER_DATA = data;
process.env.SLIP_LEDGER_LOG_LEVEL = 'silent';
const server = await createServer({
	logLevel: 'warn',
	// packages may be linked from another checkout, and fonts come from there
	server: { host: '127.0.0.1', port: 0, fs: { allow: [realpathSync('node_modules')] } }
});
await server.listen();
const { port } = server.httpServer!.address() as AddressInfo;
const browser = await chromium.launch({
	executablePath: findChromium() ?? undefined,
	args: ['--no-sandbox', '--disable-gpu', '--disable-quic']
});
try {
	for (const width of WIDTHS) await shoot(width);
} finally {
	await browser.close();
	await server.close();
	rmSync(data, { recursive: true, force: true });
}
// the runner of the queue that the pages' server started keeps the process alive
process.exit(0);

async function shoot(width: number): Promise<void> {
	const page = await browser.newPage({ viewport: { width, height: 900 }, reducedMotion: 'reduce' });
	await page.goto(`http://127.0.0.1:${port}/design`, { waitUntil: 'networkidle' });
	for (const scheme of ['light', 'dark']) {
		const sheet = page.locator(`[data-scheme="${scheme}"]`);
		// a value is refused by looks only after somebody has typed it
		await sheet.locator('[data-refused]').fill('98');
		await sheet.locator('[data-refused]').blur();
	}
	await showLooks(page);
	for (const scheme of ['light', 'dark']) {
		const sheet = page.locator(`[data-scheme="${scheme}"]`);
		await sheet.screenshot({ path: join(folder, `${scheme}-${width}.png`) });
		await sheet.locator('p button.meaning:visible').first().click();
		await page.screenshot({ path: join(folder, `meaning-${scheme}-${width}.png`) });
		await page.keyboard.press('Escape');
	}
	await page.close();
	console.log(`${folder}: light-${width}, dark-${width}, meaning-light-${width}, meaning-dark-${width}`);
}

async function showLooks(page: Page): Promise<void> {
	const devtools = await page.context().newCDPSession(page);
	await devtools.send('DOM.enable');
	await devtools.send('CSS.enable');
	const { root } = await devtools.send('DOM.getDocument');
	for (const [look, forcedPseudoClasses] of Object.entries(LOOKS)) {
		const selector = `[data-look="${look}"], [data-look-inside="${look}"] > button`;
		const { nodeIds } = await devtools.send('DOM.querySelectorAll', { nodeId: root.nodeId, selector });
		for (const nodeId of nodeIds)
			await devtools.send('CSS.forcePseudoState', { nodeId, forcedPseudoClasses });
	}
}
