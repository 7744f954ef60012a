import { expect, it } from 'vitest';
import { gainedSinceEngaged } from '$lib/charts/gainedSinceEngaged';

const COASTING = 2;
const DRIVING = 4;
const SLIP = 6;
const rests = new Set([COASTING]);

it('lies at zero while engaged, keeps a slip as a step, falls away in coasting and starts afresh after it', () => {
	const gained = Float32Array.from([0, 0, 120, 120, -300, -900, -900, -900]);
	const state = Float32Array.from([4, 4, 4, 4, COASTING, COASTING, DRIVING, DRIVING]);
	expect([...gainedSinceEngaged(gained, state, rests, SLIP)]).toEqual([0, 0, 120, 120, -300, -900, 0, 0]);
});

it('starts afresh after a second that is not known', () => {
	const gained = Float32Array.from([0, 90, NaN, 500, 500]);
	const state = Float32Array.from([4, 4, 4, 4, 4]);
	expect([...gainedSinceEngaged(gained, state, rests, SLIP)]).toEqual([0, 90, NaN, 0, 0]);
});

it('keeps the whole step of a failed pick-up, which follows coasting at once', () => {
	const gained = Float32Array.from([0, -400, -900, -699, -699]);
	const state = Float32Array.from([DRIVING, COASTING, COASTING, SLIP, DRIVING]);
	expect([...gainedSinceEngaged(gained, state, rests, SLIP)]).toEqual([0, -400, -900, 201, 201]);
});

it('counts a failed pick-up from its first known second where the one before is not known', () => {
	const gained = Float32Array.from([NaN, 201, 250]);
	const state = Float32Array.from([COASTING, SLIP, SLIP]);
	expect([...gainedSinceEngaged(gained, state, rests, SLIP)]).toEqual([NaN, 0, 49]);
});
