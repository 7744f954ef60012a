import { describe, expect, it } from 'vitest';
import { distanceAxis, timeAxis } from '$lib/charts/rideAxis';
import { STRIP_MARGIN } from '$lib/charts/strip';
import { StripsControl } from '../../src/routes/rides/[id]/stripsControl.svelte';

const WIDTH = 1000 + STRIP_MARGIN.left + STRIP_MARGIN.right;
const box = { left: 0, width: WIDTH } as DOMRect;
const control = () => new StripsControl(1000, () => WIDTH);
const key = (name: string, more: object = {}) => {
	let prevented = false;
	return {
		event: { key: name, preventDefault: () => (prevented = true), ...more } as unknown as KeyboardEvent,
		prevented: () => prevented
	};
};
const pointer = (pointerId: number, clientX: number) =>
	({ pointerId, clientX, button: 0 }) as unknown as PointerEvent;

describe('StripsControl', () => {
	it('reads the time under the pointer', () => {
		expect(control().timeAt(STRIP_MARGIN.left + 250, box)).toBe(250);
		expect(control().timeAt(0, box)).toBe(0);
	});

	it('takes a pointer for what it points at while the window is already further on', () => {
		const strips = control();
		strips.show([0, 100]);
		strips.see([0, 100]);
		strips.show([100, 200]);
		expect(strips.timeAt(STRIP_MARGIN.left + 250, box)).toBe(25);
		strips.see([100, 200]);
		expect(strips.timeAt(STRIP_MARGIN.left + 250, box)).toBe(125);
		// what lies under a wheel stays under it, however many turns come before the next picture
		const wheel = { clientX: STRIP_MARGIN.left + 250, deltaX: 0, deltaY: -100, preventDefault: () => {} };
		for (let turn = 0; turn < 3; turn++) strips.wheel(wheel as WheelEvent, box, true);
		strips.see(strips.shown);
		expect(strips.timeAt(STRIP_MARGIN.left + 250, box)).toBeCloseTo(125, 6);
	});

	it('zooms about the read-out when it is in view', () => {
		const strips = control();
		strips.cursorS = 200;
		strips.zoom(0.5);
		expect(strips.shown).toEqual([100, 600]);
	});

	it('moves by dragging, and tells a drag from a click', () => {
		const strips = control();
		strips.show([400, 500]);
		strips.pointerDown(pointer(1, 500));
		strips.pointerMove(pointer(1, 501), box);
		expect(strips.dragged).toBe(false);
		strips.pointerMove(pointer(1, 600), box);
		expect(strips.dragged).toBe(true);
		expect(strips.shown[0]).toBeCloseTo(390, 9);
	});

	it('zooms with two fingers apart', () => {
		const strips = control();
		strips.pointerDown(pointer(1, 400));
		strips.pointerDown(pointer(2, 600));
		strips.pointerMove(pointer(2, 800), box);
		expect(strips.shown[1] - strips.shown[0]).toBeCloseTo(500, 6);
	});

	it('leaves keys that it does not know to the page', () => {
		const strips = control();
		const tab = key('Tab');
		strips.key(tab.event);
		expect(tab.prevented()).toBe(false);
		const plus = key('+');
		strips.key(plus.event);
		expect(plus.prevented()).toBe(true);
		const copy = key('0', { ctrlKey: true });
		strips.key(copy.event);
		expect(copy.prevented()).toBe(false);
	});

	it('lets the window follow the read-out at its edge', () => {
		const strips = control();
		strips.show([100, 200]);
		strips.cursorS = 200;
		strips.key(key('ArrowRight').event);
		expect(strips.cursorS).toBe(201);
		expect(strips.shown).toEqual([101, 201]);
	});

	it('zooms to a stretch that is drawn with Shift held, and picks nothing with it', () => {
		const strips = control();
		strips.pointerDown(
			{ pointerId: 1, clientX: STRIP_MARGIN.left + 300, button: 0, shiftKey: true } as PointerEvent,
			box
		);
		strips.pointerMove(pointer(1, STRIP_MARGIN.left + 200), box);
		expect(strips.chosen).toEqual([200, 300]);
		expect(strips.shown).toEqual([0, 1000]);
		strips.pointerUp(pointer(1, STRIP_MARGIN.left + 200));
		expect(strips.shown).toEqual([200, 300]);
		expect(strips.chosen).toBeNull();
		expect(strips.dragged).toBe(true);
	});

	it('keeps its window as it is where it cannot move any further, so that nothing is drawn anew', () => {
		const strips = control();
		const whole = strips.shown;
		strips.zoom(2, 500);
		strips.pan(0.3);
		expect(strips.shown).toBe(whole);
		strips.zoom(0.5, 500);
		expect(strips.shown).not.toBe(whole);
	});

	it('puts the read-out where another view picks, and follows it out of the window', () => {
		const strips = control();
		strips.show([100, 200]);
		strips.pick(150);
		expect([strips.cursorS, strips.shown]).toEqual([150, [100, 200]]);
		strips.pick(500);
		expect([strips.cursorS, strips.shown]).toEqual([500, [450, 550]]);
	});
});

describe('StripsControl along the distance', () => {
	// 10 m/s for 300 s, a stop of 400 s, 10 m/s again
	const way = Float32Array.from({ length: 1001 }, (_, s) => 10 * (s < 300 ? s : Math.max(300, s - 400)));
	const along = () => {
		const strips = control();
		strips.useAxis(distanceAxis(way, 1000)!);
		return strips;
	};

	it('reads the first second that lies under the pointer', () => {
		// 6000 m in all: a quarter of the width is 1500 m
		expect(along().timeAt(STRIP_MARGIN.left + 250, box)).toBeCloseTo(150, 9);
		expect(along().timeAt(STRIP_MARGIN.left + 500, box)).toBeCloseTo(300, 9);
	});

	it('zooms and moves by metres', () => {
		const strips = along();
		strips.zoom(0.5, 150);
		// 3000 m about 1500 m, which stays at a quarter of the width
		expect(strips.shown[0]).toBeCloseTo(75, 6);
		expect(strips.shown[1]).toBeCloseTo(775, 6);
		strips.pan(-0.25);
		expect(strips.shown[0]).toBeCloseTo(0, 6);
		expect(strips.shown[1]).toBeCloseTo(300, 6);
	});

	it('widens a window in which nothing was ridden to what an axis of distance can show', () => {
		const strips = control();
		strips.show([400, 500]);
		strips.useAxis(distanceAxis(way, 1000)!);
		const { axis, shown } = strips;
		expect(axis.at(shown[1]) - axis.at(shown[0])).toBeCloseTo(20, 6);
	});

	it('comes back to the whole ride, its last stop included', () => {
		const strips = along();
		strips.zoom(0.1);
		strips.key(key('0').event);
		expect(strips.shown).toEqual([0, 1000]);
		strips.useAxis(timeAxis(1000));
		expect(strips.shown).toEqual([0, 1000]);
	});
});
