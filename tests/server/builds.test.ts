import { describe, expect, it } from 'vitest';
import {
	assignRide,
	actorOf,
	buildContents,
	buildHardware,
	buildList,
	changeBuild,
	changePart,
	choosePerson,
	copyBuild,
	createBuild,
	makeRevision,
	partView,
	programmeRows,
	withdrawRide,
	type BuildContentsInput
} from '$lib/server';
import { freshLedger, HOUR_MS, rowsOf, withHardware } from './testLedger';
import { at, ridden, workshop } from './trialBuild';

describe('changeBuild', () => {
	it('writes the whole bill with serials and torques, and says who changed what', () => {
		const { ledger, buildId, ringA, grease } = workshop();
		expect(buildContents(ledger, buildId)).toMatchObject({
			bill: [
				{ partId: ringA, quantity: 1, serial: '7', note: '' },
				{ partId: grease, quantity: 0.5, serial: '' }
			],
			torques: [{ joint: 'axle cap', wantedNm: 12, recordedNm: null, personId: null }]
		});
		const [last] = rowsOf(ledger, "SELECT detail FROM trail WHERE subject = 'build' ORDER BY id DESC");
		expect(JSON.parse(String(last.detail))).toEqual({
			bill: { before: [], after: ['1 x RR-24, revision A, serial 7', '0.5 x LUB-1'] },
			torques: { before: [], after: ['axle cap, wanted 12 Nm'] }
		});
	});

	it('notes who tightened a joint when the torque is written down, and keeps it afterwards', () => {
		const { ledger, actor, change, buildId, clock } = workshop();
		const recorded = [{ joint: 'axle cap', wantedNm: 12, recordedNm: 12.5, tool: 'wrench 3' }];
		change({ torques: recorded });
		const [first] = buildContents(ledger, buildId)!.torques;
		expect(first).toMatchObject({ personId: actor.personId, atMs: clock.ms });
		clock.ms += HOUR_MS;
		change({ torques: recorded, notes: 'later' });
		expect(buildContents(ledger, buildId)!.torques[0].atMs).toBe(first.atMs);
		change({ torques: [{ ...recorded[0], recordedNm: 12 }] });
		expect(buildContents(ledger, buildId)!.torques[0].atMs).toBe(clock.ms);
	});

	it('refuses what cannot be, names it, and saves nothing of it', () => {
		const { ledger, buildId, ringA, ringB, grease, change } = workshop();
		const before = buildContents(ledger, buildId);
		const wrong: [Partial<BuildContentsInput>, RegExp][] = [
			[{ bill: [{ partId: ringA, quantity: 0 }] }, /quantity in line 1 \(ring\)/],
			[{ bill: [{ partId: ringA, quantity: 1.5 }] }, /whole number/],
			[{ bill: [{ partId: ringA, quantity: null }] }, /missing/],
			[{ bill: [{ partId: grease, quantity: 5000 }] }, /between 0.01 and 1000 g/],
			[{ bill: [{ partId: 99, quantity: 1 }] }, /no such part/],
			[{ bill: [{ partId: ringA, quantity: 2, serial: 'x' }] }, /one serial stands for 2 pieces/],
			[
				{
					bill: [
						{ partId: ringA, quantity: 1, serial: 'x' },
						{ partId: ringB, quantity: 1, serial: 'X' }
					]
				},
				/stands in the bill twice/
			],
			[{ torques: [{ joint: 'cap', wantedNm: -3 }] }, /between 0.1 and 300 Nm/],
			[{ torques: [{ joint: 'cap', wantedNm: 5000 }] }, /between/],
			[{ torques: [{ joint: 'cap', wantedNm: NaN }] }, /not a number/],
			[{ torques: [{ joint: 'cap' }, { joint: 'Cap' }] }, /twice/],
			[{ endFloatMm: 12 }, /end float/],
			[{ endFloatMm: -0.1 }, /end float/],
			[{ stepHubDeg: 0 }, /step/],
			[{ notes: 'x'.repeat(4001) }, /longer/],
			[{ builtAt: at(5000) }, /has not come yet/],
			[{ builtBy: 99 }, /Nobody/]
		];
		for (const [changes, sentence] of wrong) expect(() => change(changes)).toThrow(sentence);
		expect(buildContents(ledger, buildId)).toEqual(before);
	});

	it('tells the second of two people whose change stands and overwrites nothing', () => {
		const { ledger, actor, buildId, input } = workshop();
		const other = actorOf(choosePerson(ledger, 'Somebody else'));
		const seen = buildHardware(ledger, buildId)!.rowVersion;
		changeBuild(ledger, other, buildId, seen, input({ notes: 'first' }));
		expect(() => changeBuild(ledger, actor, buildId, seen, input({ notes: 'second' }))).toThrow(
			/^P2 has changed this build meanwhile, on .+ nothing of yours was saved/
		);
		expect(buildHardware(ledger, buildId)!.notes).toBe('first');
	});

	it('keeps in the trail the lines that changed, and all of them when only the order did', () => {
		const { ledger, change, input, ringB } = workshop();
		const [ring, grease] = input().bill!;
		const last = () =>
			JSON.parse(
				String(rowsOf(ledger, "SELECT detail FROM trail WHERE subject = 'build' ORDER BY id DESC")[0].detail)
			) as object;
		change({ bill: [{ partId: ringB, quantity: 1, serial: '7' }, grease], notes: 'why' });
		expect(last()).toEqual({
			notes: { before: '', after: 'why' },
			bill: {
				before: ['1 x RR-24, revision A, serial 7'],
				after: ['1 x RR-24, revision B, serial 7']
			}
		});
		change({ bill: [ring, grease], notes: 'why' });
		change({ bill: [grease, ring], notes: 'why' });
		expect(last()).toEqual({
			bill: {
				before: ['1 x RR-24, revision A, serial 7', '0.5 x LUB-1'],
				after: ['0.5 x LUB-1', '1 x RR-24, revision A, serial 7']
			}
		});
	});

	it('keeps names of builds apart', () => {
		const { ledger, actor, change } = workshop();
		createBuild(ledger, actor, { name: 'Other', description: '' });
		expect(() => change({ name: 'other' })).toThrow('named "other" already');
		change({ name: 'TRIAL' });
	});
});

describe('a build that rides refer to', () => {
	it('cannot be changed in anything that was written down, and says what to do', async () => {
		const { change, ledger, buildId, ringB } = await ridden();
		const before = buildContents(ledger, buildId);
		for (const changes of [
			{ bill: [{ partId: ringB, quantity: 1, serial: '7' }] },
			{ torques: [{ joint: 'axle cap', wantedNm: 13 }] },
			{ torques: [] },
			{ stepHubDeg: 10 },
			{ name: 'Another name' }
		])
			expect(() => change(changes)).toThrow(/cannot be changed any more .+a ride refers to it.+new revision/);
		expect(buildContents(ledger, buildId)).toEqual(before);
		expect(buildHardware(ledger, buildId)!.lock).toBe('a ride refers to it');
	});

	it('can be completed where nothing was written', async () => {
		const { change, ledger, buildId } = await ridden();
		change({
			description: 'written down later',
			endFloatMm: 0.02,
			torques: [{ joint: 'axle cap', wantedNm: 12, recordedNm: 12 }]
		});
		expect(buildHardware(ledger, buildId)).toMatchObject({
			description: 'written down later',
			endFloatMm: 0.02,
			torques: [{ recordedNm: 12 }]
		});
		expect(() => change({ description: 'once more', endFloatMm: 0.02 })).toThrow('cannot be changed');
	});

	it('stays so when its ride is withdrawn, and when a person gave it the ride', async () => {
		const { ledger, actor, rideId, buildId } = await ridden();
		withdrawRide(ledger, actor, rideId, 'a mistake');
		expect(buildHardware(ledger, buildId)!.lock).not.toBeNull();
		const chosen = createBuild(ledger, actor, { name: 'Chosen', description: '' });
		expect(buildHardware(ledger, chosen)!.lock).toBeNull();
		assignRide(ledger, actor, rideId, { buildId: chosen });
		expect(buildHardware(ledger, chosen)!.lock).toBe('a ride refers to it');
	});

	it('holds its parts: they are completed, not changed', async () => {
		const { ledger, actor, ringA, ringB } = await ridden();
		const part = (id: number) => partView(ledger, id)!;
		const facts = {
			number: 'RR-24',
			revision: 'A',
			name: 'ring',
			kind: 'ratchet ring',
			pointsOfEngagement: 24
		};
		expect(() =>
			changePart(ledger, actor, ringA, part(ringA).rowVersion, { ...facts, pointsOfEngagement: 36 })
		).toThrow(/^This part cannot be changed any more .+"Trial", and a ride refers to that build/);
		changePart(ledger, actor, ringA, part(ringA).rowVersion, { ...facts, material: 'steel' });
		expect(part(ringA).material).toBe('steel');
		changePart(ledger, actor, ringB, 1, { ...facts, revision: 'B', pointsOfEngagement: 36 });
		expect(part(ringB).pointsOfEngagement).toBe(36);
	});
});

describe('makeRevision', () => {
	it('copies bill and wanted torques, leaves measurements behind and the old build as it was', async () => {
		const { ledger, actor, buildId, change, ringB } = await ridden();
		change({ endFloatMm: 0.05, torques: [{ joint: 'axle cap', wantedNm: 12, recordedNm: 12 }] });
		const old = buildContents(ledger, buildId);
		const next = makeRevision(ledger, actor, buildId);
		expect(buildHardware(ledger, next)).toMatchObject({
			name: 'Trial, revision 2',
			revision: 2,
			state: 'draft',
			predecessor: { id: buildId },
			endFloatMm: null,
			torques: [{ joint: 'axle cap', wantedNm: 12, recordedNm: null, by: null }],
			lock: null
		});
		change({ bill: [{ partId: ringB, quantity: 1, serial: '8' }] }, next);
		expect(buildContents(ledger, buildId)).toEqual(old);
		expect(buildHardware(ledger, next)!.difference).toMatchObject({
			predecessor: { name: 'Trial' },
			parts: [
				{
					change: 'changed',
					mark: 'RR-24, revision B',
					fields: [
						{ field: 'revision', before: 'A', after: 'B' },
						{ field: 'serial', before: '7', after: '8' }
					]
				},
				{ change: 'removed', mark: 'LUB-1' }
			]
		});
		expect(buildHardware(ledger, buildId)!.successors).toEqual([{ id: next, name: 'Trial, revision 2' }]);
	});

	it('counts on within the family, whichever revision it is made from', () => {
		const { ledger, actor, buildId } = workshop();
		const second = makeRevision(ledger, actor, buildId);
		const third = makeRevision(ledger, actor, buildId);
		const fourth = makeRevision(ledger, actor, second);
		expect([second, third, fourth].map((id) => buildHardware(ledger, id)!.name)).toEqual([
			'Trial, revision 2',
			'Trial, revision 3',
			'Trial, revision 4'
		]);
		expect(buildHardware(ledger, fourth)!.predecessor?.id).toBe(second);
	});
});

describe('copyBuild', () => {
	it('begins another build under its own name and compares it with where it came from', () => {
		const { ledger, actor, buildId, grease } = workshop();
		expect(() => copyBuild(ledger, actor, buildId, 'trial')).toThrow('already');
		const next = copyBuild(ledger, actor, buildId, 'Next');
		const view = buildHardware(ledger, next)!;
		expect(view).toMatchObject({ revision: 1, predecessor: { id: buildId }, state: 'draft' });
		expect(view.difference).toMatchObject({ parts: [], sameParts: 2, torques: [], step: null, noBill: null });
		expect(view.bill[1]).toMatchObject({ part: { id: grease }, quantity: 0.5, unit: 'g' });
	});
});

it('a build without a bill has nothing to compare and says so', () => {
	const test = freshLedger();
	const { buildId } = withHardware(test);
	const next = makeRevision(test.ledger, test.actor, buildId);
	expect(buildHardware(test.ledger, next)!.difference).toMatchObject({ noBill: 'before', parts: [] });
	expect(buildHardware(test.ledger, buildId)!.difference).toBeNull();
	expect(buildHardware(test.ledger, 99)).toBeNull();
});

describe('buildList', () => {
	it('gives each build with where it goes back to, its parts, wheels and the distance of its rides', async () => {
		const { ledger, actor, buildId, wheelId } = await ridden();
		const next = makeRevision(ledger, actor, buildId);
		expect(buildList(ledger)).toMatchObject([
			{ id: buildId, parts: 2, rides: 1, totalM: 30_000, wheels: [{ id: wheelId }], predecessor: null },
			{ id: next, revision: 2, parts: 2, rides: 0, totalM: 0, wheels: [], predecessor: { id: buildId } }
		]);
		const [row] = programmeRows(ledger);
		expect(buildList(ledger)[0]).toMatchObject({ rides: row.rides, totalM: row.totalM, wheels: row.wheels });
	});
});
