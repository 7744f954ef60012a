import { describe, expect, it } from 'vitest';
import {
	answerRiderMark,
	assignRide,
	buildList,
	choosePerson,
	correctRideClock,
	countComputingAgain,
	createBike,
	createBuild,
	decideTwin,
	figureKey,
	fitBuild,
	listRides,
	listWheels,
	openLedger,
	recordUnloggedDistance,
	recordVerdict,
	restoreRide,
	rideView,
	splitRide,
	withdrawRide,
	type Ledger
} from '$lib/server';
import { evidenceOfBuilds } from '$lib/server/evidence/buildEvidence';
import { axesOfWheels } from '$lib/server/hardware/distances';
import { rememberRides } from '$lib/server/ledger/rememberRides';
import { markedRides } from '$lib/server/marks/markedRides';
import { eventTallies } from '$lib/server/rates/eventTallies';
import { evidenceParts } from '$lib/server/rides/evidenceParts';
import { ridesOfBuild } from '$lib/server/hardware/ridesOfBuild';
import { rideBriefs } from '$lib/server/rides/rideBriefs';
import { allRideFacts } from '$lib/server/rides/rideFacts';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { packChannel } from '../../src/jobs/analysis/packChannel';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from './testLedger';

/** Everything that is read ride by ride. */
function everything(ledger: Ledger, builds: readonly { id: number; name: string }[]) {
	return {
		facts: allRideFacts(ledger),
		briefs: rideBriefs(ledger),
		builds: buildList(ledger),
		wheels: listWheels(ledger),
		waiting: listRides(ledger, { pageSize: 50, onlyNeeds: true }),
		ridesOfBuilds: builds.map(({ id }) => ridesOfBuild(ledger, id)),
		/** while something is written the ledger itself is asked */
		ridesWhileWriting: builds.map(({ id }) => ledger.database.transaction(() => ridesOfBuild(ledger, id))()),
		parts: evidenceParts(ledger),
		tallies: eventTallies(ledger),
		marked: markedRides(ledger),
		computingAgain: countComputingAgain(ledger),
		axes: axesOfWheels(ledger),
		evidence: evidenceOfBuilds(ledger, builds)
	};
}

/** The same by a process that knew nothing before. */
function readAnew(folder: string, builds: readonly { id: number; name: string }[]) {
	const other = openLedger(folder, { migrate: false });
	try {
		return everything(other, builds);
	} finally {
		other.close();
	}
}

/** what a ride has to have so that it can be split */
const channels = [
	packChannel(
		'distanceM',
		Float64Array.from({ length: 3601 }, (_, s) => s * 8),
		0.1
	),
	packChannel('state', new Float64Array(3601).fill(DRIVE_STATES.indexOf('driving')), 1)
];
const instant = (ms: number) => new Date(ms).toISOString();

describe('rememberRides', () => {
	it('knows after every kind of change what a process knows that reads everything', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId, buildId } = withHardware(test);
		const builds = [{ id: buildId, name: 'Old' }];
		const events = [slipAt(600), slipAt(1500), slipAt(2100, { kind: 'failed pick-up' })];
		const marks = [300, 605, 1800].map((timeS) => ({ timeS, observed: true }));
		const exposure = { cells: [], hours: [], marks };
		const first = await addRide(test, { events, exposure }, { lapsMeanSlips: true });
		const second = await addRide(test, { startedAtMs: START_MS + 2 * HOUR_MS, events });
		everything(ledger, builds);
		const event = (rideId: number, place: number) => rideView(ledger, rideId)!.eventList[place].id;
		let copy = 0;
		let next = 0;
		const changes: Record<string, () => unknown> = {
			'a ride comes in': () =>
				addRide(test, { startedAtMs: START_MS + 4 * HOUR_MS, events: [slipAt(50)], channels }),
			'an earlier one comes in': () => addRide(test, { startedAtMs: START_MS - 2 * HOUR_MS }),
			'a copy comes in': async () => (copy = await addRide(test, { startedAtMs: START_MS + 2 * HOUR_MS })),
			'the copied ride is withdrawn': () => withdrawRide(ledger, actor, second, 'a reason'),
			'the copied ride comes back': () => restoreRide(ledger, actor, second),
			'a copy is decided': () => decideTwin(ledger, actor, copy, 'same recording'),
			'an event is rejected': () =>
				recordVerdict(ledger, actor, event(first, 0), { verdict: 'rejected', reason: 'shift' }),
			'an event is confirmed': () => recordVerdict(ledger, actor, event(second, 1), { verdict: 'confirmed' }),
			'a lap is answered': () => answerRiderMark(ledger, actor, first, 1800, 'a slip was felt'),
			'laps mean nothing': () => assignRide(ledger, actor, first, { lapsMeanSlips: false }),
			'a bike is named': () => {
				const bikeId = createBike(ledger, actor, { name: 'Bike', chainrings: [40], cassette: [11, 21] });
				assignRide(ledger, actor, first, { bikeId });
			},
			'a build is fitted during a ride': () => {
				next = createBuild(ledger, actor, { name: 'New', description: '' });
				builds.push({ id: next, name: 'New' });
				fitBuild(ledger, actor, { wheelId, buildId: next, from: instant(START_MS + 4.5 * HOUR_MS) });
			},
			'the ride is split': () => splitRide(ledger, actor, allRideFacts(ledger).at(-1)!.id),
			'a ride is given to the other build': () => assignRide(ledger, actor, first, { buildId: next }),
			'a clock is corrected': () => correctRideClock(ledger, actor, first, instant(START_MS + 90_000)),
			'distance without a file': () =>
				recordUnloggedDistance(ledger, actor, wheelId, { at: instant(START_MS), distanceM: 5_000, note: '' })
		};
		for (const [what, change] of Object.entries(changes)) {
			await change();
			const known = everything(ledger, builds);
			expect(known, what).toEqual(readAnew(ledger.folder, builds));
			expect(known.ridesOfBuilds, what).toEqual(known.ridesWhileWriting);
		}
	});

	it('reads only the rides again that were touched, and all of them after a change that concerns any', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		for (const hour of [0, 2, 4]) await addRide(test, { startedAtMs: START_MS + hour * HOUR_MS });
		const before = allRideFacts(test.ledger);
		withdrawRide(test.ledger, test.actor, before[1].id, 'a reason');
		const after = allRideFacts(test.ledger);
		expect(after.map((ride, place) => ride === before[place])).toEqual([true, false, true]);
		expect(after[1].standing.state).toBe('withdrawn');
		const buildId = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		fitBuild(test.ledger, test.actor, { wheelId, buildId, from: instant(START_MS + 3 * HOUR_MS) });
		const fitted = allRideFacts(test.ledger);
		expect(fitted.some((ride, place) => ride === after[place])).toBe(false);
		expect(fitted[2].buildId).toBe(buildId);
	});

	it('reads nothing again because somebody gave a name, and figures stay what they are', async () => {
		const test = freshLedger();
		await addRide(test);
		const before = [allRideFacts(test.ledger), figureKey(test.ledger)];
		const rider = choosePerson(test.ledger, 'A new rider');
		expect(allRideFacts(test.ledger)).toBe(before[0]);
		expect(figureKey(test.ledger)).toEqual(before[1]);
		assignRide(test.ledger, test.actor, allRideFacts(test.ledger)[0].id, { riderId: rider.id });
		expect(allRideFacts(test.ledger)[0].riderCode).toBe(rider.code);
		expect(figureKey(test.ledger)).not.toEqual(before[1]);
	});

	it('keeps nothing of a transaction that is taken back', async () => {
		const test = freshLedger();
		const rideId = await addRide(test);
		const wet = () =>
			rememberRides(test.ledger, 'wet', {
				all: () => test.ledger.database.prepare('SELECT wet FROM ride').pluck().all(),
				anew: () => test.ledger.database.prepare('SELECT wet FROM ride').pluck().all()
			});
		expect(wet()).toEqual([null]);
		const takenBack = test.ledger.database.transaction(() => {
			test.ledger.database.prepare('UPDATE ride SET wet = 1 WHERE id = ?').run(rideId);
			expect(wet()).toEqual([1]);
			throw new Error('taken back');
		});
		expect(takenBack).toThrow('taken back');
		// as many changes as were taken back
		test.ledger.database.prepare('UPDATE ride SET example = example WHERE id = ?').run(rideId);
		expect(wet()).toEqual([null]);
	});
});
