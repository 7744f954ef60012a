import { describe, expect, it } from 'vitest';
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
});
