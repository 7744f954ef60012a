import { describe, expect, it } from 'vitest';
import { DRIVE_LANES, laneShare, laneSums } from '$lib/charts/driveLanes';
import { drawLane } from '$lib/charts/drawLanes';
import { DRIVE_STATES } from '$lib/slip/analysis';

const code = (name: (typeof DRIVE_STATES)[number]) => DRIVE_STATES.indexOf(name);
const states = Float32Array.from(
	['driving', 'slip', 'coasting', 'stopped', 'not observed', 'shifting', 'picking up'] as const,
	code
);
const lane = (label: string) => laneSums(states)[DRIVE_LANES.findIndex((known) => known.label === label)];

describe('laneShare', () => {
	it('gives each second its lane for half a second on either side; a slip is driven', () => {
		expect(laneShare(lane('drive'), -0.5, 1.5)).toBe(1);
		expect(laneShare(lane('drive'), 0.5, 2.5)).toBe(0.5);
		expect(laneShare(lane('coast'), 1.75, 2.25)).toBe(1);
		expect(laneShare(lane('stand'), 2, 4)).toBe(0.5);
	});

	it('leaves what is not known in no lane', () => {
		for (const { label } of DRIVE_LANES) expect(laneShare(lane(label), 3.5, 4.5)).toBe(0);
		expect(laneShare(lane('pick-up'), 6.5, 20)).toBe(0);
	});
});

describe('drawLane', () => {
	/** the filled area of a drawing in square pixels */
	function drawn(sum: ReturnType<typeof lane>, timeAt: (pixel: number) => number, width: number) {
		const rects: number[][] = [];
		const context = { beginPath() {}, fill() {}, rect: (...rect: number[]) => rects.push(rect) };
		drawLane(context as unknown as CanvasRenderingContext2D, sum, timeAt, {
			left: 0,
			right: width,
			top: 10,
			height: 8
		});
		return { rects, area: rects.reduce((total, [, , w, h]) => total + w * h, 0) };
	}

	it('fills as much as was spent in the lane, however long the ride', () => {
		let seed = 11;
		const chance = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
		const long = Float32Array.from({ length: 18_000 }, () => code(chance() < 0.4 ? 'coasting' : 'driving'));
		const [drive] = laneSums(long);
		const { area } = drawn(drive, (pixel) => (pixel / 1000) * 17_999, 1000);
		expect(area / (1000 * 8)).toBeCloseTo(laneShare(drive, 0, 17_999), 3);
	});

	it('joins full neighbours and stands on the floor of the lane where it is not full', () => {
		// 100 px a second: driving and slip from 0 to 1.5 s
		const { rects } = drawn(lane('drive'), (pixel) => pixel / 100, 300);
		expect(rects).toEqual([[0, 10, 150, 8]]);
		const [partial] = drawn(lane('coast'), (pixel) => pixel * 3, 2).rects;
		// one of six seconds
		expect(partial[3]).toBeCloseTo(8 / 6, 9);
		expect(partial[1] + partial[3]).toBeCloseTo(18, 9);
	});
});
