import { describe, expect, it } from 'vitest';
import WheelAxis from '$lib/charts/WheelAxis.svelte';
import { fittingName, spanPixels } from '$lib/charts/wheelLanes';
import { createFormats } from '$lib/ui/formats';
import { svgOf } from './svgOf';

const formats = createFormats('en-GB', 'UTC');
const history = {
	builds: [
		{ id: 1, name: 'Original', fromM: 0, toM: 60_000 },
		{ id: 2, name: 'Prototype with a long name', fromM: 70_000, toM: 100_000 }
	],
	gaps: [{ fromM: 60_000, toM: 70_000 }],
	services: [
		{ id: 1, atM: 30_000, toM: 70_000 },
		{ id: 2, atM: 70_000, toM: 100_000 }
	],
	rides: [
		{ rideId: 1, fromM: 0, toM: 40_000, observedM: 20_000 },
		{ rideId: 2, fromM: 50_000, toM: 100_000, observedM: 0 }
	],
	unlogged: [{ id: 1, fromM: 40_000, toM: 50_000 }],
	slips: [
		{ eventId: 7, atM: 12_000, confirmed: true },
		{ eventId: 8, atM: 90_000, confirmed: false }
	],
	notices: [
		{ kind: 'inspection' as const, id: 1, atM: 70_000 },
		{ kind: 'incident' as const, id: 1, atM: 95_000 }
	],
	totalM: 100_000,
	chosenM: 50_000,
	width: 428,
	formats
};
const axis = (more: object = {}) => svgOf(WheelAxis, { ...history, ...more }).replaceAll('\u00a0', ' ');

describe('WheelAxis', () => {
	it('draws builds, services, rides, unlogged distance, slips, inspections and incidents on one axis', () => {
		expect(axis()).toMatchSnapshot();
	});

	it('fills a ride as high as its observed share and leaves what was not observed hatched', () => {
		const heights = [...axis().matchAll(/class="seen"[^>]* height="([\d.]+)"/g)].map((found) => found[1]);
		expect(heights).toEqual(['9', '0']);
		expect(axis().match(/url\(#wheel-hatch\)/g)).toHaveLength(2);
	});

	it('says in words what it shows, and where the slider stands', () => {
		expect(axis()).toContain(
			'Distance of the wheel, 100 km: Original from 0 km to 60.0 km, Prototype with a long name from 70.0 km to 100 km; 2 services, 2 rides, 2 slips, 1 inspection, 1 incident'
		);
		expect(axis()).toContain('aria-valuetext="50.0 km"');
		expect(axis({ chosenM: null })).not.toContain('class="chosen"');
	});

	it('is drawn for a wheel that nothing is known of', () => {
		const empty = { builds: [], gaps: [], services: [], rides: [], unlogged: [], slips: [], notices: [] };
		expect(axis({ ...empty, totalM: 0, chosenM: null })).toContain('no build; 0 services, 0 rides');
	});
});

describe('spanPixels', () => {
	it('keeps a stretch that is shorter than a pixel visible', () => {
		expect(spanPixels({ fromM: 100, toM: 101 }, (metres) => metres / 100, 2)).toEqual({ left: 1, width: 2 });
		expect(spanPixels({ fromM: 0, toM: 1234 }, (metres) => metres / 100, 2)).toEqual({
			left: 0,
			width: 12.3
		});
	});
});

describe('fittingName', () => {
	it('cuts a name to its band and leaves it out where nothing readable fits', () => {
		expect(fittingName('Retrofit', 80)).toBe('Retrofit');
		expect(fittingName('Prototype 1', 50)).toBe('Proto…');
		expect(fittingName('Retrofit', 20)).toBe('');
	});
});
