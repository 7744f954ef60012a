import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { walkByTab } from './walkByTab';
import { DESK, openWorkshop, type Visit, type Workshop } from './workshop';

const PAGES = [
	'/',
	'/rides',
	'/wheels',
	'/builds',
	'/people',
	'/settings',
	'/access',
	'/ledger',
	'/help',
	'/own'
];

describe('a workshop that is set up by keys alone', () => {
	let workshop: Workshop;
	let desk: Visit;

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
	});
	afterAll(() => workshop?.close());

	/** presses Tab until the control of this name has the focus */
	async function tabTo(name: RegExp): Promise<void> {
		const { page } = desk;
		const told = () =>
			page.evaluate(() => {
				const element = document.activeElement as HTMLInputElement | null;
				return `${element?.labels?.[0]?.innerText ?? ''} ${element?.innerText ?? ''}`.trim();
			});
		for (let press = 0; press < 100; press++) {
			await page.keyboard.press('Tab');
			if (name.test(await told())) return;
		}
		throw new Error(`Tab does not lead to ${name}`);
	}

	it('is started with a name and an empty ledger', async () => {
		const { page } = desk;
		await page.goto('/');
		await tabTo(/^Your name/);
		await page.keyboard.type('Ada Nowhere');
		await page.keyboard.press('Enter');
		await page.getByRole('button', { name: 'Start empty' }).waitFor();
		await tabTo(/^Start empty/);
		await page.keyboard.press('Enter');
		await page.getByText('No wheel yet').waitFor();
	});

	it('offers first of all to skip to the content, in sight, and does it', async () => {
		const { page } = desk;
		await page.goto('/wheels');
		await page.keyboard.press('Tab');
		const skip = page.locator('.skip');
		expect(await skip.evaluate((link) => link === document.activeElement)).toBe(true);
		expect((await skip.boundingBox())!.x).toBeGreaterThanOrEqual(0);
		await page.keyboard.press('Enter');
		expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
		await page.keyboard.press('Tab');
		const inside = await page.evaluate(() => document.activeElement?.closest('main') !== null);
		expect(inside).toBe(true);
	});

	it('gets a wheel and a build', async () => {
		const { page } = desk;
		await page.goto('/wheels');
		await tabTo(/^Name/);
		await page.keyboard.type('Blue wheel');
		await page.keyboard.press('Enter');
		await page.getByRole('heading', { name: 'Blue wheel' }).waitFor();
		await page.goto('/builds');
		await tabTo(/^Name/);
		await page.keyboard.type('As found');
		await page.keyboard.press('Enter');
		await page.getByRole('heading', { name: /As found/ }).waitFor();
		expect(desk.complaints).toEqual([]);
	});

	it('shows a meaning by Enter, takes it away by Escape, and the keys are where they were', async () => {
		const { page } = desk;
		await page.goto('/');
		await tabTo(/^Observed/);
		await page.keyboard.press('Enter');
		await page.locator('.card:popover-open').waitFor();
		await page.keyboard.press('Escape');
		await page.locator('.card:popover-open').waitFor({ state: 'hidden' });
		expect(await page.evaluate(() => (document.activeElement as HTMLElement).innerText)).toMatch(/^Observed/);
	});

	it('finds a control that does not show the focus, one that Tab never reaches and one out of sight', async () => {
		const page = await desk.context.newPage();
		await page.setContent(
			'<button>sound</button><button style="outline: none">dull</button>' +
				'<button style="position: fixed; left: -500px">away</button>' +
				'<div style="display: flex; flex-direction: column-reverse"><button>low</button><button>high</button></div>' +
				'<div onkeydown="event.preventDefault()"><button>trap</button></div><button>after</button>'
		);
		expect(await walkByTab(page)).toEqual([
			'button "dull" has the focus and does not show it',
			'button "away" has the focus out of sight',
			'button "high" lies above button "low", which comes before it',
			'button "trap" holds the keys',
			'button "after" is not reached by Tab'
		]);
		await page.close();
	});

	it('reaches every control of every page by Tab, in sight and with the focus shown', async () => {
		const { page } = desk;
		const found: string[] = [];
		for (const path of PAGES) {
			await page.goto(path, { waitUntil: 'networkidle' });
			for (const trouble of await walkByTab(page)) found.push(`${path}: ${trouble}`);
		}
		expect(found).toEqual([]);
		expect(desk.complaints).toEqual([]);
	});
});
