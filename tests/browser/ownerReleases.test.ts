import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
	addStack,
	buildHardware,
	changeBuild,
	createBuild,
	createPart,
	createPerson,
	createWheel,
	decisionRecord,
	fitBuild,
	openSession,
	putInTest,
	recordBenchCheck,
	releaseView,
	type Actor,
	type Role
} from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { expectEveryPageIsSound } from './everyPage';
import { findChromium } from './findChromium.mjs';
import { comeIn } from './firstSteps';
import { openGuarded, OWNER, send, type GuardedServer } from './guardedServer';
import { handIn } from './handIn';
import { watch, type Visit } from './workshop';

const NAME = 'ledger.test';
const sample = (name: string) => fileURLToPath(new URL(`../../sample-rides/${name}`, import.meta.url));
/** the invented rides of June, in which no slip was made */
const RIDES = ['2026-06-22-w1-r3.fit', '2026-06-27-w1-r1.fit'];
/** two rides are read, and some hundred slips put into each, by one child process */
const PUT_IN_WITHIN_MS = 600_000;
const OWNER_ACTOR: Actor = { personId: 1, name: OWNER.name, role: 'owner' };

describe('an owner releases a build, and the field contradicts', () => {
	let server: GuardedServer;
	let browser: Browser;
	let owner: Visit;
	const people: Partial<Record<'engineer' | 'R1' | 'R3', number>> = {};
	let [wheelId, beforeId, buildId] = [0, 0, 0];

	beforeAll(async () => {
		// criteria come before the rides: the ledger's clock stands at the day on which they were set
		server = await openGuarded(['--address', `http://${NAME}:PORT`], {
			startsAtMs: Date.UTC(2026, 5, 20, 9)
		});
		browser = await chromium.launch({
			executablePath: findChromium() ?? undefined,
			args: ['--no-sandbox', '--disable-gpu', '--disable-quic', `--host-resolver-rules=MAP ${NAME} 127.0.0.1`]
		});
		setUpHardware();
	});
	afterAll(async () => {
		await browser?.close();
		await server?.stop();
	});

	/** a wheel with the build before and the one to be released: bench-checked, whole sheet, in test */
	function setUpHardware(): void {
		const ledger = server.ledger();
		const make = (name: string, role: Role) => createPerson(ledger, OWNER_ACTOR, { name, role });
		people.engineer = make('En Nowhere', 'engineer');
		people.R1 = make('Ro Nowhere', 'rider');
		people.R3 = make('Si Nowhere', 'rider');
		wheelId = createWheel(ledger, OWNER_ACTOR, { name: 'Wheel A', hub: 'a hub' });
		beforeId = createBuild(ledger, OWNER_ACTOR, { name: 'As found', description: '', stepHubDeg: 15 });
		buildId = createBuild(ledger, OWNER_ACTOR, { name: 'New ring', description: '', stepHubDeg: 15 });
		const ring = createPart(ledger, OWNER_ACTOR, {
			number: 'RR-24',
			batch: 'B7',
			name: 'ring',
			kind: 'ratchet ring',
			finish: 'as produced',
			pointsOfEngagement: 24
		});
		changeBuild(ledger, OWNER_ACTOR, buildId, buildHardware(ledger, buildId)!.rowVersion, {
			name: 'New ring',
			description: '',
			stepHubDeg: 15,
			builtBy: 1,
			builtAt: '2026-06-15T10:00:00Z',
			preload: 'finger tight and a quarter turn',
			endFloatMm: 0.02,
			bill: [{ partId: ring, quantity: 1 }],
			torques: [{ joint: 'axle cap', wantedNm: 12, recordedNm: 12.1 }]
		});
		addStack(ledger, OWNER_ACTOR, buildId, {
			variant: '11-speed body',
			elements: [{ label: 'shell', side: 'hub', nominalMm: 142, measuredMm: 142 }]
		});
		recordBenchCheck(ledger, OWNER_ACTOR, buildId, {
			staticTorqueNm: 120,
			torqueHeld: true,
			coastsFreely: true,
			noCreep: true
		});
		putInTest(ledger, OWNER_ACTOR, buildId, true);
		fitBuild(ledger, OWNER_ACTOR, { wheelId, buildId: beforeId, from: '2026-04-01T08:00:00Z' });
		fitBuild(ledger, OWNER_ACTOR, { wheelId, buildId, from: '2026-06-18T08:00:00Z' });
	}

	async function visit(): Promise<Visit> {
		const context = await browser.newContext({
			baseURL: server.origin,
			locale: 'en-GB',
			timezoneId: 'Europe/Berlin',
			reducedMotion: 'reduce',
			viewport: { width: 1440, height: 1000 }
		});
		return watch(await context.newPage(), context, server.origin);
	}

	async function signIn(): Promise<Visit> {
		const one = await visit();
		await comeIn(one.page, OWNER, '/sign-in');
		return one;
	}

	/** the same folder on a later day */
	async function goOn(startsAtMs?: number): Promise<void> {
		await owner.context.close();
		await server.leave();
		server = await openGuarded(['--address', `http://${NAME}:PORT`], {
			dataFolder: server.dataFolder,
			startsAtMs
		});
		owner = await signIn();
	}

	/** opens the release page and waits until its figures are there */
	async function openRelease({ page }: Visit): Promise<void> {
		await page.goto(`/builds/${buildId}/release`);
		await page
			.getByRole('heading', { name: 'May New ring go into production?' })
			.waitFor({ timeout: 60_000 });
	}

	const cookieOf = (personId: number) =>
		`session=${openSession(server.ledger(), { personId, linkId: null, device: 'computer' }).token}`;

	it('signs in and sets what the build has to show, before its test', async () => {
		owner = await signIn();
		const { page } = owner;
		await openRelease(owner);
		const form = page.locator('form[action="?/criteria"]');
		for (const [label, value] of [
			['Fewer slips than', '150'],
			['Confidence', '90'],
			['Wheels, at least', '1'],
			['Riders, at least', '2'],
			['Observed km on each wheel', '30'],
			['Slips allowed', '0'],
			['The old build slipped from', '20'],
			['Observed km above that torque', '0,5'],
			['Wet, observed km', '0'],
			['Dry, observed km', '0'],
			['A slip that ends the test', '180'],
			['Why these', 'agreed with the maker before the test']
		])
			await form.getByLabel(label).fill(value);
		await form.getByRole('button', { name: 'Set the criteria' }).click();
		await page.getByText('Not yet: the test goes on.').waitFor();
		expect(await page.getByRole('row', { name: /^Design/ }).innerText()).toMatch(/not yet/);
		expect(owner.complaints).toEqual([]);
	});

	it(
		'sees every criterion hold once the rides are in and slips were put into them',
		async () => {
			await goOn(Date.UTC(2026, 7, 1, 9));
			const cookie = cookieOf(people.engineer!);
			for (const [index, riderId] of [people.R3, people.R1].entries())
				await handIn(server, cookie, sample(RIDES[index]), { wheelId, riderId });
			await handIn(server, cookie, sample('2026-05-02-w1-r1.fit'), { wheelId, riderId: people.R1 });
			const { database } = server.ledger();
			const putInto = database.prepare<[], { n: number }>(
				`SELECT count(*) AS n FROM insertion_test t JOIN ride r ON r.id = t.ride_id
			WHERE r.started_ms > unixepoch('2026-06-20') * 1000`
			);
			await expect.poll(() => putInto.get()!.n, { timeout: PUT_IN_WITHIN_MS }).toBe(RIDES.length);
			await openRelease(owner);
			const { page } = owner;
			const rows = await page.locator('section[aria-labelledby="standing-heading"] tbody tr').allInnerTexts();
			expect(rows.filter((row) => !/\bholds\b/.test(row))).toEqual([]);
			expect(rows.length).toBeGreaterThanOrEqual(12);
			await page.getByRole('heading', { name: 'Every criterion holds' }).waitFor();
			await page.getByText('Every criterion holds: an owner may sign.').waitFor();
		},
		PUT_IN_WITHIN_MS + 120_000
	);

	it('lets no engineer sign: neither offered nor taken', async () => {
		const engineer = await visit();
		const cookie = cookieOf(people.engineer!);
		await engineer.context.addCookies([
			{ name: 'session', value: cookie.split('=')[1], url: server.origin, httpOnly: true }
		]);
		await openRelease(engineer);
		const { page } = engineer;
		await page.getByText('An owner of the workshop signs.').waitFor();
		expect(await page.getByRole('button', { name: 'Sign', exact: true }).count()).toBe(0);
		await engineer.context.close();

		const seen = owner.page.locator('form[action="?/sign"]');
		const fields = new URLSearchParams({
			criteria: await seen.locator('[name=criteria]').inputValue(),
			record: await seen.locator('[name=record]').inputValue(),
			decision: 'released',
			reason: 'it looked good to me'
		});
		const answer = await send(server, `/builds/${buildId}/release?/sign`, {
			method: 'POST',
			headers: {
				host: new URL(server.origin).host,
				origin: server.origin,
				cookie,
				'content-type': 'application/x-www-form-urlencoded',
				accept: 'application/json'
			},
			body: fields.toString()
		});
		expect(answer.body).toContain('Only an owner signs');
		const { database } = server.ledger();
		expect(database.prepare('SELECT count(*) AS n FROM release_decision').get()).toEqual({ n: 0 });
		expect(database.prepare('SELECT state FROM build WHERE id = ?').get(buildId)).toEqual({
			state: 'in test'
		});
	});

	it("signs “released by this workshop's criteria”; the record has the hash that it was signed by", async () => {
		const { page } = owner;
		const form = page.locator('form[action="?/sign"]');
		const shown = await form.locator('[name=record]').inputValue();
		await form.getByLabel('Decision').selectOption({ label: "Released by this workshop's criteria" });
		await form.getByLabel('Why').fill('Both riders rode it through June without a slip.');
		await form.getByRole('button', { name: 'Sign', exact: true }).click();
		const article = page.getByRole('article').filter({ hasText: "Released by this workshop's criteria" });
		await article.waitFor();
		expect(await article.innerText()).toMatch(/signed by P1 on 1 August 2026|signed by P1 on 1 Aug 2026/);
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('link', { name: 'with everything that it rests on' }).click()
		]);
		const bytes = Buffer.concat((await (await download.createReadStream()).toArray()) as Buffer[]);
		const sha256 = createHash('sha256').update(bytes).digest('hex');
		expect(sha256).toBe(shown);
		expect(bytes.toString('utf8')).toBe(decisionRecord(server.ledger(), 1));
		const record = JSON.parse(bytes.toString('utf8')) as { state: string; rides: unknown[] };
		expect(record).toMatchObject({ state: 'all hold', build: { name: 'New ring' } });
		expect(record.rides).toHaveLength(2);
		for (const name of [OWNER.name, 'En Nowhere', 'Ro Nowhere', 'Si Nowhere'])
			expect(bytes.toString('utf8')).not.toContain(name);
		await page
			.getByText(/^released$/)
			.first()
			.waitFor();
		await page.getByText('Nothing from the field yet').waitFor();

		await page.goto(`/report?before=${beforeId}&after=${buildId}`);
		await page.getByRole('heading', { name: 'Criteria and decision' }).waitFor({ timeout: 60_000 });
		const report = await page.locator('main').innerText();
		expect(report).toContain(sha256);
		expect(report).toContain('Both riders rode it through June without a slip.');
		expect(report).toMatch(/no certificate/);
		for (const name of [OWNER.name, 'En Nowhere', 'Ro Nowhere', 'Si Nowhere'])
			expect(report).not.toContain(name);
		await expectEveryPageIsSound(owner, [`/builds/${buildId}/release`]);
	});

	it('alarms on every page that leads there once somebody fell with it, and changes no record', async () => {
		await goOn();
		const { page } = owner;
		await page.goto(`/wheels/${wheelId}/incidents`, { waitUntil: 'networkidle' });
		await page.getByLabel('When').fill('2026-09-12T08:40');
		await page.getByLabel('How bad').selectOption('fell');
		await page.getByLabel('What was felt').fill('the crank fell through when starting at a light');
		await page.getByRole('button', { name: 'Report it' }).click();
		await page.getByText('The incident is in the ledger. Open the hub').waitFor();
		await openRelease(owner);
		await page.getByRole('heading', { name: 'The field contradicts the release' }).waitFor();
		await page.getByText('Stop delivering this build and tell whoever rides it').waitFor();
		await page.getByText('A criterion fails or is out of reach').waitFor();
		expect(await page.getByRole('row', { name: /^Stop rule/ }).innerText()).toMatch(/fails/);
		await page.goto('/');
		await page
			.getByRole('heading', { name: 'New ring: The field contradicts the release' })
			.waitFor({ timeout: 60_000 });
		const view = releaseView(server.ledger(), buildId, createFormats('en-GB', 'Europe/Berlin'))!;
		expect(view.build.state).toBe('released');
		expect(view.decisions).toMatchObject([{ decision: 'released', whole: true }]);
		await expectEveryPageIsSound(owner, [`/builds/${buildId}/release`]);
		expect(owner.complaints).toEqual([]);
	});
});
