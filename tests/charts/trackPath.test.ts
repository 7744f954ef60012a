import { describe, expect, it } from 'vitest';
import RideTrack from '$lib/charts/RideTrack.svelte';
import { trackPath } from '$lib/charts/trackPath';
import { svgOf } from './svgOf';

const f32 = (...values: number[]) => Float32Array.from(values);

describe('trackPath', () => {
	it('keeps the shape: a degree of longitude at 60 degrees north is half as long as one of latitude', () => {
		const track = trackPath(f32(59.95, 60.05, 60.05), f32(10, 10, 10.1), [1000, 1000])!;
		const [a, b, c] = [0, 1, 2].map((second) => track.at(second)!);
		expect((c.x - b.x) / (a.y - b.y)).toBeCloseTo(0.5, 2);
		expect(a.y).toBeGreaterThan(b.y);
	});

	it('breaks the line where a position is missing and has no place there', () => {
		const track = trackPath(f32(50, 50.01, NaN, 50.02), f32(8, 8, 8, 8.01), [300, 300])!;
		expect(track.path.match(/M/g)?.length).toBe(2);
		expect(track.at(2)).toBeNull();
	});

	it('stays inside the drawing', () => {
		const track = trackPath(f32(50, 50.3, 50.1), f32(8, 8.9, 8.4), [400, 300])!;
		expect(track.width).toBeLessThanOrEqual(400);
		expect(track.height).toBeLessThanOrEqual(300);
	});

	it('draws a long stretch by the same points wherever it begins, with both of its ends', () => {
		const winding = Float32Array.from({ length: 3000 }, (_, s) => 50 + 0.01 * Math.sin(s / 40));
		const east = Float32Array.from({ length: 3000 }, (_, s) => 8 + s / 10_000);
		const track = trackPath(winding, east, [900, 420])!;
		const points = (from: number, to: number) => track.pathOf(from, to).slice(1).split('L');
		const [before, after] = [points(101, 2101), points(107, 2107)];
		expect(before.length).toBeLessThanOrEqual(602);
		expect(before.length).toBeGreaterThan(300);
		// all but the ends, and what the window has left or reached since
		expect(after.slice(1, -2)).toEqual(before.slice(2, -1));
		const at = (second: number) => {
			const { x, y } = track.at(second)!;
			return `${x.toFixed(1)},${y.toFixed(1)}`;
		};
		expect([before[0], before.at(-1)]).toEqual([at(101), at(2101)]);
	});

	it('draws nothing for a ride without positions or on the spot', () => {
		expect(trackPath(f32(NaN, NaN), f32(NaN, NaN), [300, 300])).toBeNull();
		expect(trackPath(f32(50, 50), f32(8, 8), [300, 300])).toBeNull();
	});
});

describe('RideTrack', () => {
	it('marks events where they happened, those without a position not at all', () => {
		const slip = (id: number, startS: number) =>
			({ id, number: id, startS, endS: startS + 1, standing: 'unreviewed' }) as const;
		const svg = svgOf(RideTrack, {
			latitudeDeg: f32(50, 50.01, NaN, 50.02),
			longitudeDeg: f32(8, 8, 8, 8.01),
			slips: [slip(1, 1), slip(2, 2)],
			selectedId: null,
			cursorS: 1,
			window: [0, 1] as const,
			width: 300,
			onpick: () => {},
			onopen: () => {}
		});
		expect(svg).toMatchSnapshot();
		expect(svg).toContain('with 1 event"');
		expect(svg).toContain('>1<');
		expect(svg).not.toContain('>2<');
	});
});
