import { describe, expect, it } from 'vitest';
import { changesDuringRide } from '$lib/hardware/changesDuringRide';
import { ridePartBuilds } from '$lib/hardware/ridePartBuilds';

const ride = { wheelId: 1, chosenBuildId: null, startMs: 100, endMs: 200 };
const period = (id: number, buildId: number, fromMs: number, untilMs: number | null, wheelId = 1) => ({
	id,
	wheelId,
	buildId,
	fromMs,
	untilMs
});

describe('changesDuringRide', () => {
	it('gives the instants at which a build came on or off, in order and each once', () => {
		const periods = [period(2, 8, 150, 170), period(1, 7, 0, 150), period(3, 9, 180, null)];
		expect(changesDuringRide(ride, periods)).toEqual([150, 170, 180]);
	});

	it('gives none at the very start or end of the ride, and none of other wheels', () => {
		const periods = [period(1, 7, 0, 100), period(2, 8, 100, 200), period(3, 9, 120, 130, 2)];
		expect(changesDuringRide(ride, periods)).toEqual([]);
	});
});

describe('ridePartBuilds', () => {
	it('gives each part the build that was fitted then', () => {
		const periods = [period(1, 7, 0, 150), period(2, 8, 150, null)];
		expect(ridePartBuilds(ride, [150], periods)).toEqual([
			{ fromMs: 100, untilMs: 150, build: { kind: 'build', buildId: 7 } },
			{ fromMs: 150, untilMs: 200, build: { kind: 'build', buildId: 8 } }
		]);
	});

	it('says of a part during which nothing was fitted that it has no build', () => {
		const [before, after] = ridePartBuilds(ride, [150], [period(2, 8, 150, null)]);
		expect(before.build).toEqual({ kind: 'no build' });
		expect(after.build).toEqual({ kind: 'build', buildId: 8 });
	});

	it('asks again of a part that another change now falls into', () => {
		const periods = [period(1, 7, 0, 160), period(2, 8, 160, null)];
		expect(ridePartBuilds(ride, [150], periods).map(({ build }) => build.kind)).toEqual([
			'build',
			'across a change'
		]);
	});

	it('leaves cuts outside the ride out and keeps the whole of it in order', () => {
		const parts = ridePartBuilds(ride, [250, 170, 100, 130, 170], [period(1, 7, 0, null)]);
		expect(parts.map(({ fromMs, untilMs }) => [fromMs, untilMs])).toEqual([
			[100, 130],
			[130, 170],
			[170, 200]
		]);
	});
});
