import { describe, expect, it } from 'vitest';
import {
	assignRide,
	comparison,
	correctFittedPeriod,
	createBuild,
	createWheel,
	fitBuild,
	recordUnloggedDistance,
	restoreRide,
	withdrawFittedPeriod,
	withdrawRide,
	withdrawRow,
	wheelHistory
} from '$lib/server';
import { buildDistances } from '$lib/server/hardware/distances';
import { seeded, shuffled } from '../hardware/seeded';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, type TestLedger } from './testLedger';

const ROUNDS = 8;
const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();

/** Wheel, build, from, until in hours: what in the end is true. */
const PERIODS = [
	[0, 0, 0, 100],
	[0, 1, 110, 200],
	[1, 0, 0, 90],
	[1, 2, 90, 250]
] as const;
/** Wheel, hour, metres; two at the same instant, one in a gap. */
const UNLOGGED = [
	[0, 50, 12_345.6],
	[0, 50, 1.1],
	[0, 105, 3333.3],
	[1, 240, 777.7]
] as const;
/** Wheel, hour, metres. */
const RIDES = [
	[0, 5, 10_000.1],
	[0, 30, 20_000.2],
	[0, 60, 30_000.3],
	[0, 150, 40_000.4],
	[1, 10, 50_000.5],
	[1, 95, 60_000.6],
	[1, 230, 70_000.7]
] as const;

interface World extends TestLedger {
	wheels: number[];
	builds: number[];
	random: () => number;
}
/** One thing that came to be known, maybe wrongly at first; its steps keep their order, others come between. */
type Story = (() => void | Promise<void>)[];

function periodStory(world: World, [wheel, build, from, until]: (typeof PERIODS)[number]): Story {
	const { ledger, actor, wheels, builds, random } = world;
	const fit = (buildId: number, fromHours: number, untilHours: number) =>
		fitBuild(ledger, actor, {
			wheelId: wheels[wheel],
			buildId,
			from: at(fromHours),
			until: at(untilHours)
		});
	let id = 0;
	if (random() < 0.4)
		return [
			() => void (id = fit(builds[build], from + 3, until - 4)),
			() => correctFittedPeriod(ledger, actor, id, { from: at(from), until: at(until) })
		];
	if (random() < 0.4)
		return [
			() => void (id = fit(builds[(build + 1) % 3], from, until)),
			() => withdrawFittedPeriod(ledger, actor, id, 'another build'),
			() => void fit(builds[build], from, until)
		];
	return [() => void fit(builds[build], from, until)];
}

function rideStory(world: World, [wheel, hour, totalM]: (typeof RIDES)[number]): Story {
	const { ledger, actor, wheels, random } = world;
	const file = { startedAtMs: START_MS + hour * HOUR_MS, totalM, events: [slipAt(hour + 20)] };
	const firstWheel = random() < 0.4 ? wheels[1 - wheel] : wheels[wheel];
	const withdrawn = random() < 0.3;
	let id = 0;
	return [
		async () => void (id = await addRide(world, file, { wheelId: firstWheel })),
		...(withdrawn
			? [() => withdrawRide(ledger, actor, id, 'by mistake'), () => restoreRide(ledger, actor, id)]
			: []),
		() => assignRide(ledger, actor, id, { wheelId: wheels[wheel] })
	];
}

function unloggedStory(world: World, [wheel, hour, distanceM]: (typeof UNLOGGED)[number]): Story {
	const { ledger, actor, wheels, random } = world;
	const note = (metres: number) =>
		recordUnloggedDistance(ledger, actor, wheels[wheel], { at: at(hour), distanceM: metres });
	let wrong = 0;
	return [
		...(random() < 0.5
			? [
					() => void (wrong = note(99_999)),
					() =>
						withdrawRow(ledger, actor, 'unlogged_distance', { id: wrong, wheelId: wheels[wheel] }, 'mistyped')
				]
			: []),
		() => void note(distanceM)
	];
}

async function tell(random: () => number) {
	const test = freshLedger();
	const { ledger, actor } = test;
	const wheels = ['A', 'B'].map((name) => createWheel(ledger, actor, { name, hub: '' }));
	const builds = ['X', 'Y', 'Z'].map((name) => createBuild(ledger, actor, { name, description: '' }));
	const world: World = { ...test, wheels, builds, random };
	const stories = shuffled(
		[
			...PERIODS.map((one) => periodStory(world, one)),
			...RIDES.map((one) => rideStory(world, one)),
			...UNLOGGED.map((one) => unloggedStory(world, one))
		],
		random
	);
	while (stories.some((story) => story.length > 0)) {
		const open = stories.filter((story) => story.length > 0);
		await open[Math.floor(random() * open.length)].shift()!();
	}
	return {
		builds: buildDistances(ledger).sort((a, b) => a.buildId - b.buildId || a.wheelId - b.wheelId),
		wheels: wheels.map((wheelId) => {
			const { totalM, unloggedM, withoutBuildM, slips, rides } = wheelHistory(ledger, wheelId);
			const places = [slips.map(({ atM }) => atM), rides.map(({ fromM, toM }) => [fromM, toM])];
			return { totalM, unloggedM, withoutBuildM, places };
		}),
		ages: comparison(ledger, builds).lines.map(({ build, wheel, endM, slips }) => ({
			build,
			wheel,
			endM,
			slips: slips.map(({ atM, count }) => [atM, count])
		}))
	};
}

describe('distances', () => {
	it(`end in the same sums whatever the order of uploads, corrections, re-assignments and withdrawals (${ROUNDS} seeded orders)`, async () => {
		const random = seeded(20261125);
		const expected = await tell(random);
		expect(expected.builds.map(({ totalM }) => totalM)).toEqual(
			[10_000.1 + 20_000.2 + 12_345.6 + 1.1 + 30_000.3, 50_000.5, 40_000.4, 60_000.6 + 70_000.7 + 777.7].map(
				(metres) => expect.closeTo(metres, 6)
			)
		);
		expect(expected.wheels[0].withoutBuildM).toBeCloseTo(3333.3, 6);
		for (let round = 1; round < ROUNDS; round++) expect(await tell(random)).toEqual(expected);
	}, 60_000);
});
