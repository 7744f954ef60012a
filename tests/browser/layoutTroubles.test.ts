import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium } from './findChromium.mjs';
import { layoutTroubles } from './layoutTroubles';

// what every page is asked has to be found where it is there
describe('layoutTroubles', () => {
	let browser: Browser;
	beforeAll(async () => {
		browser = await chromium.launch({
			executablePath: findChromium() ?? undefined,
			args: ['--no-sandbox', '--disable-gpu']
		});
	});
	afterAll(() => browser?.close());

	const troubles = async (body: string, fingers = false) => {
		const page = await browser.newPage({ viewport: { width: 390, height: 600 } });
		await page.setContent(
			`<style>button { width: 100px; height: 50px; margin: 0 } .unseen { position: absolute }</style>${body}`
		);
		const found = await layoutTroubles(page, fingers);
		await page.close();
		return found;
	};

	it('finds nothing where controls lie side by side or inside each other', async () => {
		expect(await troubles('<button>one</button><button>two</button><p>a <a href="#">link</a>')).toEqual([]);
		expect(await troubles('<summary>s <a href="#">inside</a></summary>')).toEqual([]);
	});

	it('finds two controls that overlap', async () => {
		expect(await troubles('<button>one</button><button style="margin-left: -20px">two</button>')).toEqual([
			'button "one" overlaps button "two"'
		]);
	});

	it('leaves out what is hidden, kept for screen readers, or cut off by a box that scrolls', async () => {
		const hidden = '<button style="visibility: hidden; margin-left: -50px">two</button>';
		expect(await troubles(`<button>one</button>${hidden}`)).toEqual([]);
		expect(
			await troubles(
				'<div style="overflow: auto; height: 60px"><div style="height: 55px"></div><button>low</button></div><button>below</button>'
			)
		).toEqual([]);
	});

	it('finds a page that is wider than its window', async () => {
		expect(await troubles('<div style="width: 500px">wide</div>')).toEqual([
			expect.stringMatching(/^the page is \d+ px wider than the window$/)
		]);
	});

	it('finds fields of a row that stand at different heights, but not those of the next line', async () => {
		const row = (under: string) =>
			`<div class="form-row" style="display: flex; flex-wrap: wrap; align-items: start">
				<label style="display: grid">One <input name="one" style="width: 150px"></label>
				<label style="display: grid">Two ${under}<input name="two" style="width: 150px"></label>
				<label style="display: grid">Three <br> lines <input name="three" style="width: 150px"></label>
			</div>`;
		expect(await troubles(row(''))).toEqual([]);
		expect(await troubles(row('<span>said of it</span>'))).toEqual([
			'input "two" stands at another height than input "one" beside it'
		]);
	});

	it('finds what is too small for a finger, but not a link in a sentence or a box whose label is large', async () => {
		const small = '<button style="height: 30px">small</button>';
		expect(await troubles(small)).toEqual([]);
		expect(await troubles(small, true)).toEqual(['button "small" is 100 x 30 px, too small for a finger']);
		expect(
			await troubles(
				'<p>a <a href="#">link</a></p><label style="display: block; height: 44px"><input type="checkbox"> tick</label>',
				true
			)
		).toEqual([]);
	});
});
