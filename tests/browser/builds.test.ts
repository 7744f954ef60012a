import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { grayPng } from '../../src/lib/server/example/grayPng';
import { expectEveryPageIsSound } from './everyPage';
import { startEmpty, unexpectedOn } from './firstSteps';
import { DESK, openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

describe('builds and parts of a workshop', () => {
	let workshop: Workshop;
	let desk: Visit;

	const unexpected = () => unexpectedOn(desk);

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		await startEmpty(desk, 'Bo Nobody');
	});
	afterAll(() => workshop?.close());

	it('refuses a part with a negative tolerance, keeps what was typed, and takes it mended', async () => {
		const { page } = desk;
		await page.goto('/parts/new');
		await page.getByLabel('Part number').fill('RR-24');
		await page.getByLabel('Revision').fill('A');
		await page.getByLabel('Name', { exact: true }).fill('ratchet ring');
		await page.getByLabel('Points of engagement').fill('24');
		const length = page.getByRole('group', { name: 'Length 1' });
		await length.getByLabel('Which').fill('width');
		await length.getByLabel('Drawn').fill('7,5');
		await length.getByLabel('Minus').fill('-0.05');
		await page.getByRole('button', { name: 'Keep the part' }).click();
		await page.getByRole('alert').getByText('Minus of "width"').waitFor();
		expect(await page.getByLabel('Part number').inputValue()).toBe('RR-24');
		await length.getByLabel('Minus').fill('0.05');
		await page.getByRole('button', { name: 'Keep the part' }).click();
		await page.getByRole('heading', { name: 'ratchet ring' }).waitFor();
		expect(await page.locator('td', { hasText: '7.500' }).count()).toBe(1);
		await page.getByRole('link', { name: 'Next revision or batch' }).click();
		await page.getByLabel('Revision').fill('B');
		await page.getByRole('button', { name: 'Keep the part' }).click();
		await page.getByText('RR-24, revision B', { exact: true }).waitFor();
		expect(unexpected()).toEqual([]);
	});

	it('lists the parts of a build with serial and torque', async () => {
		const { page } = desk;
		await page.goto('/builds');
		await page.getByLabel('Name').fill('Trial');
		await page.getByLabel('One engagement step').fill('15');
		await page.getByRole('button', { name: 'Create it' }).click();
		await page.getByRole('heading', { name: 'Change Trial' }).waitFor();
		const line = page.getByRole('group', { name: 'Line 1' });
		await line.getByLabel('Part').selectOption({ label: 'ratchet ring: RR-24, revision A' });
		await line.getByLabel('Serial').fill('007');
		const joint = page.getByRole('group', { name: 'Joint 1' });
		await joint.getByLabel('Joint').fill('end cap');
		await joint.getByLabel('Wanted').fill('12');
		await page.getByRole('button', { name: 'Keep it' }).click();
		await page.getByRole('heading', { name: 'Parts in order of assembly' }).waitFor();
		expect(await page.getByRole('row', { name: /ratchet ring .* 007/ }).count()).toBe(1);
		expect(await page.getByRole('row', { name: /end cap 12 Nm not written down/ }).count()).toBe(1);
	});

	it('tells the second of two people who edit it whose change stands, and keeps what they typed', async () => {
		const { page, context } = desk;
		await page.goto('/builds/1/edit');
		const second = await context.newPage();
		await second.goto('/builds/1/edit', { waitUntil: 'networkidle' });
		await page.getByLabel('Notes').fill('first');
		await page.getByRole('button', { name: 'Keep it' }).click();
		await page.getByRole('heading', { name: 'Parts in order of assembly' }).waitFor();
		await second.getByLabel('Notes').fill('second');
		// twice: a refused change must not pass as seen
		for (const _again of [1, 2]) {
			await second.getByRole('button', { name: 'Keep it' }).click();
			await second.getByRole('alert').getByText('P1 has changed this build meanwhile').waitFor();
		}
		expect(await second.getByLabel('Notes').inputValue()).toBe('second');
		await second.getByRole('link', { name: 'Open the form anew' }).click();
		await expect.poll(() => second.getByLabel('Notes').inputValue()).toBe('first');
		await second.close();
		expect(unexpected()).toEqual([]);
	});

	it('goes into test only after a bench check that was passed and after riders were told', async () => {
		const { page } = desk;
		await page.goto('/builds/1', { waitUntil: 'networkidle' });
		const test = page.getByRole('button', { name: 'Put it in test' });
		expect(await test.count()).toBe(0);
		const check = async (held: boolean) => {
			await page.getByText('Write a bench check down').click();
			await page.getByLabel('Static drive torque').fill('120');
			if (held) await page.getByLabel('The torque was held').check();
			await page.getByLabel('It coasts freely').check();
			await page.getByLabel('The ring did not creep').check();
			await page.getByRole('button', { name: 'Keep the bench check' }).click();
		};
		await check(false);
		await page.getByRole('row', { name: /120 Nm no yes yes/ }).waitFor();
		expect(await test.count()).toBe(0);
		await page.reload({ waitUntil: 'networkidle' });
		await check(true);
		await page.getByText('It passed its bench check').waitFor();
		await page.getByLabel('Whoever rides it was told this').check();
		await test.click();
		await page.getByText('In test: riders ride it').waitFor();
		expect(await page.getByText('A slip that is felt ends the test').count()).toBeGreaterThan(0);
		expect(unexpected()).toEqual([]);
	});

	it('makes a revision, shows part by part what changed, and leaves the old one readable', async () => {
		const { page } = desk;
		await page.goto('/builds/1', { waitUntil: 'networkidle' });
		await page.getByRole('button', { name: 'Make a new revision' }).click();
		await page.getByRole('heading', { name: 'Change Trial, revision 2' }).waitFor();
		const line = page.getByRole('group', { name: 'Line 1' });
		await line.getByLabel('Part').selectOption({ label: 'ratchet ring: RR-24, revision B' });
		await page.getByRole('button', { name: 'Keep it' }).click();
		await page
			.getByRole('row', { name: /ratchet ring ratchet ring revision changed revision A revision B/ })
			.waitFor();
		await page.goto('/builds/1');
		expect(await page.getByRole('row', { name: /RR-24, revision A/ }).count()).toBe(1);
		expect(await page.getByRole('link', { name: 'Trial, revision 2' }).count()).toBe(1);
	});

	it('shows a picture in place, offers other files for saving, and lets nothing in them run', async () => {
		const { page } = desk;
		await page.goto('/builds/1', { waitUntil: 'networkidle' });
		const attach = async (name: string, mimeType: string, buffer: Buffer) => {
			await page.getByText('Attach a file').click();
			await page.getByLabel('File').setInputFiles({ name, mimeType, buffer });
			await page.getByRole('button', { name: 'Attach' }).click();
		};
		await attach('ring.png', 'image/png', Buffer.from(grayPng(4, 4, new Uint8Array(16))));
		await page.getByRole('img', { name: 'ring.png' }).waitFor();
		await page.reload({ waitUntil: 'networkidle' });
		await attach('sheet.txt', 'text/plain', Buffer.from('end float 0.02 mm\n'));
		await page.getByRole('link', { name: 'sheet.txt' }).waitFor();
		await page.reload({ waitUntil: 'networkidle' });
		await attach('page.png', 'image/png', Buffer.from('<html><script>1</script>'));
		await page.getByRole('alert').getByText('Only pictures').waitFor();
		const text = await page.request.get('/attachments/2');
		expect(text.headers()).toMatchObject({
			'content-type': 'text/plain; charset=utf-8',
			'content-disposition': expect.stringMatching(/^attachment; filename="sheet.txt"/) as string,
			'content-security-policy': "default-src 'none'; sandbox",
			'x-content-type-options': 'nosniff'
		});
		expect((await page.request.get('/attachments/1')).headers()['content-disposition']).toMatch(/^inline/);
		expect((await page.request.get('/attachments/3')).status()).toBe(404);
		await page.getByText('Withdraw it').last().click();
		await page.getByLabel('Reason').last().fill('shows another hub');
		await page.getByRole('button', { name: 'Withdraw', exact: true }).last().click();
		await page.getByText(/ring\.png.*Because: shows another hub/).waitFor();
		expect((await page.request.get('/attachments/1')).status()).toBe(404);
		expect(unexpected()).toEqual([]);
		desk.complaints.length = 0;
	});

	it('prints the build sheet alone, on A4 and on Letter', async () => {
		const { page } = desk;
		await page.goto('/builds/1/sheet', { waitUntil: 'networkidle' });
		expect(await page.locator('body header').isVisible()).toBe(true);
		await page.emulateMedia({ media: 'print' });
		for (const part of ['body header', 'body footer', 'a.skip'])
			expect(await page.locator(part).first().isVisible()).toBe(false);
		expect(await page.getByRole('cell', { name: 'RR-24, revision A' }).isVisible()).toBe(true);
		expect(await page.getByText('A slip that is felt ends the test').isVisible()).toBe(true);
		// the width of the paper less its margins, CSS pixels
		for (const [format, width] of [
			['A4', 718],
			['Letter', 740]
		] as const) {
			await page.setViewportSize({ width, height: 1000 });
			expect(await desk.overhang()).toBe(0);
			const pdf = (await page.pdf({ format })).toString('latin1');
			const pages = pdf.match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
			expect(pages).toBeGreaterThan(0);
			expect(pages).toBeLessThanOrEqual(3);
		}
		await page.emulateMedia({ media: null });
		await page.setViewportSize({ width: DESK.width, height: DESK.height });
	});

	it('works without scripts: a refused build keeps what was typed', async () => {
		const state = await desk.context.storageState();
		const context = await desk.context.browser()!.newContext({
			baseURL: workshop.origin,
			javaScriptEnabled: false,
			storageState: state
		});
		const page = await context.newPage();
		await page.goto('/builds/2/edit');
		await page.getByRole('group', { name: 'Line 1' }).getByLabel('Serial').fill('9');
		await page.getByRole('group', { name: 'Line 2' }).getByLabel('Serial').fill('10');
		await page.getByRole('button', { name: 'Keep it' }).click();
		expect(await page.getByRole('alert').innerText()).toMatch(/A line with "10" names no part/);
		expect(await page.getByRole('group', { name: 'Line 1' }).getByLabel('Serial').inputValue()).toBe('9');
		await page.getByRole('group', { name: 'Line 2' }).getByLabel('Serial').fill('');
		await page.getByRole('button', { name: 'Keep it' }).click();
		expect(new URL(page.url()).pathname).toBe('/builds/2');
		expect(await page.getByRole('row', { name: /serial changed|serial/ }).count()).toBeGreaterThan(0);
		await context.close();
	});

	for (const [name, screen] of [
		['a desk, dark', { ...DESK, colorScheme: 'dark' as const }],
		['a phone', PHONE]
	] as const)
		it(`keeps every page of builds and parts sound on ${name}`, async () => {
			const visit = await workshop.open(screen);
			await visit.context.addCookies(await desk.context.cookies());
			await expectEveryPageIsSound(visit, [
				'/builds',
				'/builds/1',
				'/builds/2',
				'/builds/1/edit',
				'/builds/1/sheet',
				'/parts',
				'/parts/1',
				'/parts/1/edit',
				'/parts/new'
			]);
			await visit.context.close();
		});
});
