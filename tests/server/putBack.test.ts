import { describe, expect, it } from 'vitest';
import {
	addStack,
	attachFile,
	attachmentFile,
	buildView,
	checkedOdometer,
	createBike,
	createBuild,
	createWheel,
	fitBuild,
	historyOf,
	inspectionsOfWheel,
	listAttachments,
	putBackAttachment,
	putBackFittedPeriod,
	putBackRow,
	putBackStack,
	putWheelOnBike,
	recordInspection,
	recordOdometer,
	recordService,
	recordUnloggedDistance,
	rideView,
	stackPage,
	updateWheel,
	wearOfWheel,
	wheelHistory,
	wheelView,
	wheelsBikes,
	withdrawAttachment,
	withdrawFittedPeriod,
	withdrawInspection,
	withdrawnPeriodsOfBuild,
	withdrawnRows,
	withdrawRow,
	withdrawStack,
	type RowOfWheel
} from '$lib/server';
import { grayPng } from '$lib/server/example/grayPng';
import { evidenceKey } from '$lib/server/ledger/remember';
import { addRide, freshLedger, HOUR_MS, rowsOf, START_MS, withHardware } from './testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();
const refusal = (code: string) => expect.objectContaining({ code });

function withWheel() {
	const test = freshLedger();
	const { ledger, actor } = test;
	const { wheelId, buildId } = withHardware(test);
	return {
		...test,
		wheelId,
		buildId,
		withdraw: (table: Exclude<RowOfWheel, 'inspection'>, id: number) =>
			withdrawRow(ledger, actor, table, { id, wheelId }, 'the other wheel was meant'),
		putBack: (table: RowOfWheel, id: number, of = wheelId) =>
			putBackRow(ledger, actor, table, { id, wheelId: of })
	};
}

describe('a row of a wheel that was withdrawn and is put back', () => {
	it('ages wheel and slips again at once as unlogged distance, and leaves a trail', async () => {
		const test = withWheel();
		const { ledger, actor, wheelId, withdraw, putBack } = test;
		const id = recordUnloggedDistance(ledger, actor, wheelId, { at: at(-5), distanceM: 7000, note: 'fair' });
		await addRide(test, { totalM: 10_000 });
		const aged = () => [wheelHistory(ledger, wheelId).totalM, wheelHistory(ledger, wheelId).rides[0].fromM];
		expect(aged()).toEqual([17_000, 7000]);
		withdraw('unlogged_distance', id);
		expect(aged()).toEqual([10_000, 0]);
		expect(withdrawnRows(ledger, 'unlogged_distance', wheelId)).toEqual([
			{
				table: 'unlogged_distance',
				id,
				what: 'fair',
				at: at(-5),
				until: null,
				lasts: false,
				distanceM: 7000,
				reason: 'the other wheel was meant',
				withdrawnAt: new Date(ledger.now()).toISOString(),
				by: 'P1'
			}
		]);
		const key = evidenceKey(ledger);
		putBack('unlogged_distance', id);
		expect(evidenceKey(ledger)).toBeGreaterThan(key);
		expect(aged()).toEqual([17_000, 7000]);
		expect(withdrawnRows(ledger, 'unlogged_distance', wheelId)).toEqual([]);
		expect(historyOf(ledger, 'wheel', wheelId)[0]).toMatchObject({
			action: 'put back',
			subject: 'unlogged distance',
			subjectId: String(id),
			facts: [{ value: 'the other wheel was meant' }]
		});
	});

	it('starts the clock of a service again, counts a reading and an inspection again', async () => {
		const { ledger, actor, wheelId, withdraw, putBack } = withWheel();
		const service = recordService(ledger, actor, wheelId, {
			at: at(1),
			opened: true,
			cleaned: true,
			lubricant: 'light grease'
		});
		const reading = recordOdometer(ledger, actor, wheelId, { at: at(1), readingM: 5000 });
		const inspection = recordInspection(ledger, actor, wheelId, {
			at: at(1),
			odometerM: null,
			inspectedBy: actor.personId,
			note: '',
			findings: [{ kind: 'tooth height', place: '', instrument: 'gauge', values: [1.5] }]
		});
		const stands = () => [
			wheelHistory(ledger, wheelId).services.map(({ id }) => id),
			checkedOdometer(ledger, wheelId).map(({ id }) => id),
			inspectionsOfWheel(ledger, wheelId).map(({ id }) => id),
			wearOfWheel(ledger, wheelId).length
		];
		const before = stands();
		expect(before).toEqual([[service], [reading], [inspection], 1]);
		withdraw('service', service);
		withdraw('odometer_reading', reading);
		withdrawInspection(ledger, actor, inspection, 'another hub');
		expect(stands()).toEqual([[], [], [], 0]);
		expect(withdrawnRows(ledger, 'service', wheelId)).toMatchObject([
			{ what: 'opened, cleaned, light grease', at: at(1) }
		]);
		expect(withdrawnRows(ledger, 'inspection', wheelId)).toMatchObject([{ what: 'P1', by: 'P1' }]);
		const key = evidenceKey(ledger);
		putBack('service', service);
		putBack('inspection', inspection);
		expect(evidenceKey(ledger)).toBeGreaterThan(key + 1);
		putBack('odometer_reading', reading);
		expect(stands()).toEqual(before);
	});

	it('is refused beside what was written down at its instant since, and not beside what stood there before', () => {
		const { ledger, actor, wheelId, withdraw, putBack } = withWheel();
		const write = (distanceM: number) =>
			recordUnloggedDistance(ledger, actor, wheelId, { at: at(2), distanceM });
		const [wrong] = [write(7000), write(300)];
		withdraw('unlogged_distance', wrong);
		putBack('unlogged_distance', wrong);
		expect(wheelHistory(ledger, wheelId).totalM).toBe(7300);
		withdraw('unlogged_distance', wrong);
		const right = write(700);
		expect(() => putBack('unlogged_distance', wrong)).toThrow(
			/^Another unlogged distance at .+ was written down since this one was withdrawn, and both would count/
		);
		expect(wheelHistory(ledger, wheelId).totalM).toBe(1000);
		withdraw('unlogged_distance', right);
		putBack('unlogged_distance', wrong);
		// and now it is the later one that would stand beside it
		expect(() => putBack('unlogged_distance', right)).toThrow(refusal('conflict'));
		expect(wheelHistory(ledger, wheelId).totalM).toBe(7300);
	});

	it('is found on its own wheel alone, while it is withdrawn, and not before the wheel existed', () => {
		const { ledger, actor, wheelId, withdraw, putBack } = withWheel();
		const id = recordService(ledger, actor, wheelId, { at: at(-30), opened: true, cleaned: false });
		const other = createWheel(ledger, actor, { name: 'Wheel B', hub: '' });
		expect(() => putBack('service', id)).toThrow(refusal('not-found'));
		withdraw('service', id);
		expect(() => putBack('service', id, other)).toThrow(refusal('not-found'));
		const facts = { name: 'Wheel A', hub: 'a hub', existsFrom: at(-20) };
		updateWheel(ledger, actor, wheelId, facts, wheelView(ledger, wheelId)!.facts.rowVersion);
		expect(() => putBack('service', id)).toThrow(/exists from .+ is before that/);
		expect(wheelHistory(ledger, wheelId).services).toEqual([]);
	});

	it('needs its time free on a bike', () => {
		const { ledger, actor, wheelId, withdraw, putBack } = withWheel();
		const bikeId = createBike(ledger, actor, { name: 'One' });
		const id = putWheelOnBike(ledger, actor, { wheelId, bikeId, from: at(0) });
		withdraw('wheel_on_bike', id);
		const since = putWheelOnBike(ledger, actor, { wheelId, bikeId, from: at(5) });
		expect(() => putBack('wheel_on_bike', id)).toThrow(refusal('overlap'));
		withdraw('wheel_on_bike', since);
		putBack('wheel_on_bike', id);
		expect(wheelsBikes(ledger, wheelId)).toMatchObject([{ id, from: at(0), until: null }]);
	});
});

describe('a fitted period that was withdrawn and is put back', () => {
	it('takes the build off again that counted as fitted on, and rides follow', async () => {
		const test = withWheel();
		const { ledger, actor, wheelId, buildId } = test;
		const next = createBuild(ledger, actor, { name: 'New', description: '' });
		const id = fitBuild(ledger, actor, { wheelId, buildId: next, from: at(-1) });
		const rideId = await addRide(test);
		const standing = () => [
			rideView(ledger, rideId)!.build?.name,
			wheelView(ledger, wheelId)!.periods.map(({ build, until }) => [build.name, until])
		];
		const before = standing();
		expect(before).toEqual([
			'New',
			[
				['New', null],
				['Old', at(-1)]
			]
		]);
		withdrawFittedPeriod(ledger, actor, id, 'the wrong wheel');
		expect(standing()).toEqual(['Old', [['Old', null]]]);
		expect(withdrawnRows(ledger, 'fitted_period', wheelId)).toMatchObject([
			{ what: 'New', at: at(-1), until: null, lasts: true, reason: 'the wrong wheel' }
		]);
		expect(withdrawnPeriodsOfBuild(ledger, next)).toMatchObject([{ what: 'Wheel A', id }]);
		expect(() => putBackFittedPeriod(ledger, actor, id, { buildId })).toThrow(refusal('not-found'));
		putBackFittedPeriod(ledger, actor, id, { buildId: next });
		expect(standing()).toEqual(before);
		expect(buildView(ledger, next)!.periods[0].rides).toBe(1);
	});

	it('is refused where another build was fitted since', () => {
		const { ledger, actor, wheelId } = withWheel();
		const [next, right] = ['New', 'Right'].map((name) =>
			createBuild(ledger, actor, { name, description: '' })
		);
		const id = fitBuild(ledger, actor, { wheelId, buildId: next, from: at(2) });
		withdrawFittedPeriod(ledger, actor, id, 'the wrong build');
		fitBuild(ledger, actor, { wheelId, buildId: right, from: at(1) });
		const before = rowsOf(ledger, 'SELECT * FROM fitted_period ORDER BY id');
		expect(() => putBackFittedPeriod(ledger, actor, id, { wheelId })).toThrow(
			/^On Wheel A the build "Right" was fitted from .+ and still is; a wheel carries one build at a time/
		);
		expect(rowsOf(ledger, 'SELECT * FROM fitted_period ORDER BY id')).toEqual(before);
	});
});

describe('an axial stack that was withdrawn and is put back', () => {
	const elements = [{ label: 'shell', side: 'hub', nominalMm: 98, measuredMm: 98 }];

	it('is the base of those again that were dished on it', () => {
		const { ledger, actor, buildId } = withWheel();
		const base = addStack(ledger, actor, buildId, { variant: 'A', rimOffsetMm: 0.2, elements });
		addStack(ledger, actor, buildId, { variant: 'B', dishedOnId: base, elements });
		const before = stackPage(ledger, buildId).stacks;
		withdrawStack(ledger, actor, base, 'measured wrongly');
		expect(stackPage(ledger, buildId).stacks).toMatchObject([{ variant: 'B', rim: { from: 'not known' } }]);
		expect(withdrawnRows(ledger, 'hub_stack', buildId)).toMatchObject([
			{ what: 'A', at: null, reason: 'measured wrongly', by: 'P1' }
		]);
		putBackStack(ledger, actor, buildId, base);
		expect(stackPage(ledger, buildId).stacks).toEqual(before);
		expect(() => putBackStack(ledger, actor, buildId, base)).toThrow(refusal('not-found'));
	});

	it('is refused where its variant has another stack by now', () => {
		const { ledger, actor, buildId } = withWheel();
		const id = addStack(ledger, actor, buildId, { variant: 'body A', elements });
		withdrawStack(ledger, actor, id, 'mistyped');
		addStack(ledger, actor, buildId, { variant: 'Body A', elements });
		expect(() => putBackStack(ledger, actor, buildId, id)).toThrow(
			'This build has a stack on "Body A" already; change that one.'
		);
		const other = createBuild(ledger, actor, { name: 'New', description: '' });
		expect(() => putBackStack(ledger, actor, other, id)).toThrow(refusal('not-found'));
		expect(stackPage(ledger, buildId).stacks).toHaveLength(1);
	});
});

describe('an attachment that was withdrawn and is put back', () => {
	const PNG = grayPng(2, 2, new Uint8Array(4));

	it('is shown again, unless the same file was attached since', async () => {
		const { ledger, actor, buildId } = withWheel();
		const of = { subject: 'build', subjectId: buildId } as const;
		const attach = () => attachFile(ledger, actor, { ...of, name: 'a.png', bytes: PNG });
		const id = await attach();
		withdrawAttachment(ledger, actor, of, id, 'another hub');
		expect(attachmentFile(ledger, id)).toBeNull();
		putBackAttachment(ledger, actor, of, id);
		expect(attachmentFile(ledger, id)).toMatchObject({ fileName: 'a.png' });
		expect(listAttachments(ledger, 'build', buildId)).toMatchObject([{ id, withdrawnReason: null }]);
		expect(() => putBackAttachment(ledger, actor, of, id)).toThrow('is not withdrawn');
		withdrawAttachment(ledger, actor, of, id, 'another hub');
		await attach();
		expect(() => putBackAttachment(ledger, actor, of, id)).toThrow('attached here already');
		const elsewhere = { subject: 'build', subjectId: 99 } as const;
		expect(() => putBackAttachment(ledger, actor, elsewhere, id)).toThrow(refusal('not-found'));
	});
});
