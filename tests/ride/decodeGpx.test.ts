import { describe, expect, it } from 'vitest';
import { distanceFromPosition } from '$lib/ride/distanceFromPosition';
import { codes, decode, refusalOf, values } from './rides';

const bytesOf = (text: string) => new TextEncoder().encode(text);

/** 8 m/s due north: 8 m are 8 / 111,195 of a degree on the sphere that the reader uses */
const point = (second: number) =>
	`<trkpt lat="${(-47 + (second * 8) / 111_194.93).toFixed(9)}" lon="-24"><ele>100.5</ele>` +
	`<time>2026-05-04T08:00:${String(second).padStart(2, '0')}Z</time><extensions><power>190</power>` +
	'<x:TrackPointExtension><x:atemp>12</x:atemp><x:cad>85</x:cad></x:TrackPointExtension></extensions></trkpt>';
const segment = (from: number, to: number) =>
	`<trkseg>${Array.from({ length: to - from + 1 }, (_, i) => point(from + i)).join('\n')}</trkseg>`;
const file = (segments: string, type = 'cycling') =>
	'<?xml version="1.0"?><gpx version="1.1" xmlns="urn:a" xmlns:x="urn:b"><metadata><time>2020-01-01T00:00:00Z</time>' +
	`</metadata><trk><type>${type}</type>${segments}</trk></gpx>`;
const sound = file(segment(0, 19));

describe('decodeGpx', () => {
	it('reads cadence, power and temperature from extensions, and speed from the positions with a warning', async () => {
		const read = await decode(bytesOf(sound), 'ride.gpx');
		expect(read.format).toBe('gpx');
		expect(read.startedAtMs).toBe(Date.UTC(2026, 4, 4, 8));
		expect(values(read, 'cadenceRpm')).toEqual(Array(20).fill(85));
		expect(values(read, 'powerW')).toEqual(Array(20).fill(190));
		expect(values(read, 'temperatureC')[0]).toBe(12);
		expect(values(read, 'altitudeM')[0]).toBe(100.5);
		expect(values(read, 'speedMps')[0]).toBeNaN();
		for (const speed of values(read, 'speedMps').slice(1)) expect(speed).toBeCloseTo(8, 2);
		expect(values(read, 'distanceM')[19]).toBeCloseTo(152, 2);
		expect(read.speedSource).toBe('position');
		expect(codes(read)).toEqual(['speed-from-position']);
	});

	it('takes a speed of the extensions where there is one', async () => {
		const read = await decode(bytesOf(sound.replaceAll('<x:cad>', '<x:speed>7.5</x:speed><x:cad>')));
		expect(values(read, 'speedMps')).toEqual(Array(20).fill(7.5));
		expect(read.speedSource).toBe('not known');
		expect(codes(read)).toEqual([]);
	});

	it('reads a new segment as the end of a pause', async () => {
		const read = await decode(bytesOf(file(segment(0, 9) + segment(40, 49))));
		expect(read.pauses).toEqual([[9, 40]]);
		expect(read.gaps).toEqual([]);
	});

	it('reads a file that is cut off up to its last whole point', async () => {
		const cut = sound.slice(0, sound.length - 300);
		const read = await decode(bytesOf(cut));
		expect(values(read, 'powerW')).toHaveLength(cut.split('</trkpt>').length - 1);
		expect(codes(read)).toContain('file-cut-off');
	});

	it.each([
		['a run', file(segment(0, 9), 'running'), 'not-a-bicycle-ride'],
		['a route without track points', '<gpx><rte></rte></gpx>', 'no-records'],
		['no times', sound.replaceAll(/<time>.*?<\/time>/g, ''), 'no-clock'],
		['no cadence', sound.replaceAll(/<x:cad>.*?<\/x:cad>/g, ''), 'no-cadence'],
		['a standstill', sound.replaceAll(/lat="[^"]*"/g, 'lat="-47"'), 'no-speed']
	])('refuses %s', async (_, text, code) => {
		expect((await refusalOf(bytesOf(text), 'ride.gpx')).code).toBe(code);
	});

	it('measures a degree of the equator and of a meridian as the sphere has it', () => {
		const degree = (6_371_009 * Math.PI) / 180;
		const [, east] = distanceFromPosition(Float64Array.of(0, 0), Float64Array.of(0, 1));
		const [, north] = distanceFromPosition(Float64Array.of(59, 60), Float64Array.of(10, 10));
		const [, half] = distanceFromPosition(Float64Array.of(60, 60), Float64Array.of(0, 0.001));
		expect(east).toBeCloseTo(degree, 6);
		expect(north).toBeCloseTo(degree, 6);
		// the cosine of 60 degrees is one half
		expect(half).toBeCloseTo(degree / 2000, 6);
	});
});
