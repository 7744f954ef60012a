import { describe, expect, it } from 'vitest';
import DriveStrips from '$lib/charts/DriveStrips.svelte';
import { drawnWhole } from '$lib/charts/drawnWhole.svelte';
import { laneSums } from '$lib/charts/driveLanes';
import GearFan from '$lib/charts/GearFan.svelte';
import { timeAxis } from '$lib/charts/rideAxis';
import { rideStripData } from '$lib/charts/rideStripData';
import type { SharedStrip } from '$lib/charts/strip';
import { stripPlaces } from '$lib/charts/stripPlaces';
import { groundPaths } from '$lib/charts/groundPaths';
import StateRibbon from '$lib/charts/StateRibbon.svelte';
import TimeStrip from '$lib/charts/TimeStrip.svelte';
import WholeRideBand from '$lib/charts/WholeRideBand.svelte';
import { createFormats } from '$lib/ui/formats';
import { svgOf } from './svgOf';

const formats = createFormats('en-GB', 'UTC');
const places = stripPlaces(timeAxis(100), [10, 60], 400);
type Spans = readonly (readonly [number, number])[];
/** the ground of a strip, from seconds */
const ground = (hatched: Spans, gaps: Spans = []) => ({ ground: groundPaths(places, hatched, gaps) });
/** of what a strip is given what it shares with the others apart */
const given = ({ slips = [], selectedId = null, ground: own, ...more }: Partial<SharedStrip>) => ({
	...more,
	shared: { places, ground: own ?? ground([]).ground, slips, selectedId, formats }
});
const marks = [
	{
		id: 4,
		number: 1,
		startS: 20,
		endS: 22,
		standing: 'confirmed' as const,
		overrunCrankDeg: 180,
		strokes: 3 as const
	},
	{ id: 9, number: 2, startS: 21, endS: 23, standing: 'unreviewed' as const },
	{ id: 11, number: 3, startS: 70, endS: 71, standing: 'rejected' as const }
];

describe('TimeStrip', () => {
	const strip = (more: object) =>
		svgOf(TimeStrip, {
			...given(more),
			id: 'gained',
			label: 'Crank angle gained on the wheel',
			height: 120,
			domain: [-15, 60] as const,
			traces: []
		});

	it('draws steps as grid, hatching, gaps and marks', () => {
		const svg = strip({
			grid: [-15, 0, 15, 30, 45, 60],
			...ground(
				[
					[0, 14],
					[50, 90]
				],
				[[30, 33]]
			),
			slips: marks,
			selectedId: 4,
			marksS: [40],
			cursorS: 25,
			numbered: true
		});
		expect(svg).toMatchSnapshot();
	});

	it('leaves out what lies outside the window', () => {
		const svg = strip({ slips: marks, numbered: true, ...ground([[100, 200]]) });
		expect(svg.match(/class="span/g)?.length).toBe(2);
		expect(svg).toContain('<path d="" fill="url(#gained-hatch)">');
	});

	it('leaves out a number that would run into the next sign, but never that of the open event', () => {
		expect(strip({ slips: marks, numbered: true })).not.toContain('>1<');
		expect(strip({ slips: marks, numbered: true, selectedId: marks[0].id })).toContain('>1<');
	});

	it('tells size by the area of the sign and strength of signs by strokes under it', () => {
		const svg = strip({ slips: marks, numbered: true });
		// 180 crank degrees: 5 px x the root of two, three strokes; the others as the reference slip, none
		expect(svg).toContain('d="M0,-7.1L7.1,0L0,7.1L-7.1,0Z"');
		expect(svg.match(/class="tally"/g)).toHaveLength(1);
		expect(svg).toContain('d="M-3,10.5v4M0,10.5v4M3,10.5v4"');
		expect(svg).toContain('d="M0,-5L5,0L0,5L-5,0Z"');
	});

	it('writes the size beside the number', () => {
		expect(strip({ slips: marks.slice(0, 1), numbered: true })).toContain('>1: 180°<');
	});

	it('shows the stretch that is being chosen', () => {
		expect(strip({ chosen: [20, 30] })).toMatch(/class="chosen" x="114" [^>]* width="68"/);
		expect(strip({})).not.toContain('chosen');
	});

	it('has a name for a screen reader', () => {
		expect(strip({})).toContain('role="img" aria-label="Crank angle gained on the wheel"');
	});
});

describe('StateRibbon', () => {
	const ribbon = (more: object) =>
		svgOf(StateRibbon, {
			id: 'states',
			label: 'What the drive did',
			...given(more),
			lanes: laneSums(new Float32Array(100).fill(4))
		});

	it('names each lane, hatches what was not observed, and writes the recorded gears that have room', () => {
		const svg = ribbon({
			...ground([[0, 14]], [[30, 33]]),
			slips: marks,
			selectedId: 4,
			shifts: [
				{ timeS: 15, gear: '46/22' },
				{ timeS: 16, gear: '46/25' },
				{ timeS: 40, gear: '46/28' }
			],
			cursorS: 25
		});
		expect(svg).toMatchSnapshot();
		expect(svg).not.toContain('46/22');
	});

	it('has no lane for a shifter that the recording does not name', () => {
		expect(ribbon({})).not.toContain('shifter');
	});
});

describe('DriveStrips', () => {
	it('puts every strip on one axis, and torque at each instant only where a logger saw it', () => {
		const values = (value: number) => new Float32Array(100).fill(value);
		const draw = (ownRate: object | null) =>
			svgOf(DriveStrips, {
				data: rideStripData({
					length: 100,
					traces: {
						cadenceRpm: values(80),
						engagedCadenceRpm: values(80),
						speedMps: values(8),
						state: values(4)
					},
					facts: { ownRate }
				}),
				width: 400,
				window: [10, 60] as const,
				axis: timeAxis(100),
				slips: marks,
				stepHubDeg: 15,
				formats
			});
		const svg = draw(null);
		expect(svg).toMatchSnapshot();
		expect(svg).not.toContain('at each instant');
		expect(draw({ sampleS: 0.005, names: ['crankTorqueNm'] })).toContain('at each instant');
	});
});

describe('the line of the read-out', () => {
	const strips = (more: object) =>
		svgOf(DriveStrips, {
			data: null,
			width: 400,
			window: [10, 60] as const,
			axis: timeAxis(100),
			formats,
			...more
		});

	it('is one for all strips, moved as a whole, and none where its second is not shown', () => {
		const read = strips({ cursorS: 35 });
		// 46 px to 386 px of 400 show 50 s: 216 px
		expect(read.match(/translateX\(calc\(100% \* 216 \/ 400 - 0.5px\)\)/g)).toHaveLength(1);
		expect(read).not.toContain('class="cursor"');
		expect(strips({ cursorS: 5 })).not.toContain('translateX');
	});

	it('stands in each strip while a file is made', () => {
		drawnWhole.asked = true;
		try {
			expect(strips({ cursorS: 35 }).match(/class="cursor" x1="216" x2="216"/g)).toHaveLength(6);
		} finally {
			drawnWhole.asked = false;
		}
	});
});

describe('WholeRideBand', () => {
	it('marks the shown window, every slip and what could not have shown one', () => {
		const svg = svgOf(WholeRideBand, {
			width: 400,
			axis: timeAxis(100),
			endS: 100,
			speed: null,
			top: 40,
			hatched: [[80, 100]] as const,
			slips: marks,
			selectedId: 4,
			marksS: [40],
			cursorS: 25,
			window: [10, 60] as const,
			onwindow: () => {},
			onpick: () => {},
			onopen: () => {}
		});
		expect(svg).toMatchSnapshot();
	});
});

describe('GearFan', () => {
	const cadence = new Float32Array(100).fill(80);
	cadence[21] = 104;
	const svg = () =>
		svgOf(GearFan, {
			width: 600,
			speedKmh: new Float32Array(100).fill(24),
			cadenceRpm: cadence,
			drawn: () => true,
			window: [0, 60] as const,
			topSpeedKmh: 48,
			topCadenceRpm: 120,
			gears: [
				{ label: '42/17', developmentM: 5 },
				{ label: '42/30', developmentM: 2.83 }
			],
			slips: marks,
			selectedId: null,
			formats
		});

	it('draws a ray a gear and puts each slip of the window where the crank was fastest', () => {
		expect(svg()).toMatchSnapshot();
		// 24 km/h is half of the axis, 104 of 120 rpm near the top
		expect(svg()).toContain('transform="translate(297,63.5)"');
	});

	it('leaves out slips outside the window', () => {
		expect(svg()).not.toContain('>3<');
	});
});
