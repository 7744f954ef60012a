import { describe, expect, it } from 'vitest';
import WearLine from '$lib/charts/WearLine.svelte';
import { createFormats } from '$lib/ui/formats';
import { svgOf } from './svgOf';

const formats = createFormats('en-GB', 'UTC');
const point = (inspectionId: number, km: number, mean: number, more: object = {}) => ({
	inspectionId,
	distanceM: km * 1000,
	mean,
	range: 0,
	beforeRunIn: false,
	...more
});
const points = [
	point(1, 0, 1.7, { beforeRunIn: true }),
	point(2, 100, 1.6, { range: 0.02 }),
	point(3, 200, 1.55),
	point(4, 300, 1.5),
	point(5, 400, 1.45)
];
const band = [100, 300, 500].map((km) => {
	const value = 1.65 - 0.0005 * km;
	return { distanceM: km * 1000, value, lower: value - 0.02, upper: value + 0.02 };
});
const draw = (more: object) =>
	svgOf(WearLine, {
		label: 'tooth height over distance',
		points,
		band,
		limit: 1.3,
		reached: { atM: 700_000, lowerM: 620_000, upperM: 810_000 },
		unit: 'mm',
		width: 480,
		formats,
		...more
	});

describe('WearLine', () => {
	it('draws points with the range of their repeats, the line, its band, the limit and where it is reached', () => {
		expect(draw({})).toMatchSnapshot();
	});

	it('leaves a point before the end of the run-in open', () => {
		expect(draw({}).match(/<circle [^>]*class="open"/g)).toHaveLength(1);
	});

	it('points out of the drawing where the distance to the limit has no upper bound', () => {
		expect(draw({})).not.toContain('class="beyond"');
		const open = draw({ reached: { atM: null, lowerM: 620_000, upperM: null } });
		expect(open).toContain('class="beyond"');
		expect(open).not.toContain('class="onward"');
	});

	it('draws points alone while there is no line and no limit', () => {
		const bare = draw({ band: [], limit: null, reached: null });
		for (const kind of ['band', 'fit', 'limit', 'reach']) expect(bare).not.toContain(`class="${kind}"`);
		expect(bare.match(/<circle/g)).toHaveLength(5);
		expect(draw({ points: [], band: [], limit: null, reached: null })).not.toContain('NaN');
	});
});
