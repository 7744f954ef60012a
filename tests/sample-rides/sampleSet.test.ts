import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { decodeRide } from '$lib/ride/decodeRide';
import { RideRefused, type Ride } from '$lib/ride/ride';
import { generateSampleSet } from '../../sample-rides/generate';
import type { RideTruth } from '../../sample-rides/generator/simulatedRide';
import type { Programme } from '../../sample-rides/programme';
import { secondDecoder } from '../ride/secondDecoder';

const folder = fileURLToPath(new URL('../../sample-rides/', import.meta.url));
const read = (name: string) => new Uint8Array(readFileSync(folder + name));
const json = <T>(name: string): T => JSON.parse(readFileSync(folder + name, 'utf8')) as T;
const programme = json<Programme>('programme.json');
const truth = json<Record<string, RideTruth>>('truth.json');
const fitFiles = readdirSync(folder).filter((name) => name.endsWith('.fit'));
const truthOf = (file: string) => truth[file.replace('.fit', '')];
const rideNoted = (words: RegExp) => {
	const found = programme.rides.find((ride) => words.test(ride.note ?? ''));
	if (!found) throw new Error(`no ride is noted as ${words}`);
	return found;
};
const outcomes = new Map<string, Promise<Ride | RideRefused>>();
/** What our decoder makes of a file; each is read once. */
function outcome(file: string): Promise<Ride | RideRefused> {
	const known = outcomes.get(file);
	if (known) return known;
	const decoded = decodeRide(read(file), file).catch((error: unknown) => {
		if (error instanceof RideRefused) return error;
		throw error;
	});
	outcomes.set(file, decoded);
	return decoded;
}
const hash = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

describe('the committed example workshop', { timeout: 30_000 }, () => {
	it('has at least 24 FIT rides, 900 km and at most 10 MB, each file named in the programme', () => {
		expect(programme.rides.map((ride) => ride.file).sort()).toEqual([...fitFiles].sort());
		expect(fitFiles.length).toBeGreaterThanOrEqual(24);
		const km = Object.values(truth).reduce((sum, ride) => sum + ride.km, 0);
		expect(km).toBeGreaterThanOrEqual(900);
		expect(fitFiles.reduce((sum, name) => sum + read(name).length, 0)).toBeLessThanOrEqual(10e6);
	});

	it('has three wheels, three riders and three builds, and every rider rode every build', () => {
		expect(programme.wheels.map((wheel) => wheel.id)).toEqual(['W1', 'W2', 'W3']);
		expect(programme.riders.map((rider) => rider.code)).toEqual(['R1', 'R2', 'R3']);
		expect(programme.builds.map((build) => build.id)).toEqual(['original', 'prototype-1', 'retrofit']);
		for (const build of programme.builds) {
			const riders = new Set(programme.rides.filter((r) => r.build === build.id).map((r) => r.rider));
			expect([...riders].sort()).toEqual(['R1', 'R2', 'R3']);
			expect(build.stepHubDeg).toBeCloseTo(360 / build.pointsOfEngagement, 9);
		}
	});

	it('lets each ride fall into the period in which its build was on its wheel', () => {
		for (const ride of programme.rides) {
			const startMs = truthOf(ride.sameAs ?? ride.file).startUtc * 1000;
			const fitted = programme.fittedPeriods.filter(
				(period) =>
					period.wheel === ride.wheel &&
					Date.parse(period.from) <= startMs &&
					(period.until === null || startMs < Date.parse(period.until))
			);
			expect(fitted.map((period) => period.build)).toEqual([ride.build]);
		}
	});

	it('slips in the wanted order: the original most and more with distance, the prototype less, the retrofit hardly', () => {
		const rate = (build: string, wheel?: string, half?: 0 | 1) => {
			const rides = programme.rides.filter(
				(r) => r.build === build && (!wheel || r.wheel === wheel) && !r.sameAs
			);
			const part =
				half === undefined ? rides : half ? rides.slice(rides.length / 2) : rides.slice(0, rides.length / 2);
			const km = part.reduce((sum, ride) => sum + truthOf(ride.file).km, 0);
			const slips = part
				.flatMap((ride) => truthOf(ride.file).events)
				.filter((e) => e.kind === 'slip' && e.crankDeg >= 90);
			return (100 * slips.length) / km;
		};
		for (const wheel of ['W1', 'W2', 'W3'])
			expect(rate('original', wheel, 1)).toBeGreaterThan(rate('original', wheel, 0));
		expect(rate('original')).toBeGreaterThan(2.5 * rate('prototype-1'));
		expect(rate('prototype-1')).toBeGreaterThan(5 * rate('retrofit'));
		expect(rate('retrofit')).toBeLessThan(0.3);
	});

	it('loads the builds alike: the mean power of their rides differs by less than a tenth', async () => {
		const means = [];
		for (const build of programme.builds) {
			const powers: number[] = [];
			for (const { file } of programme.rides.filter((r) => r.build === build.id && !r.trainer && !r.sameAs)) {
				const ride = await outcome(file);
				if (!(ride instanceof RideRefused)) powers.push(...(ride.channels.powerW?.value ?? []));
			}
			means.push(powers.reduce((sum, w) => sum + w, 0) / powers.length);
		}
		expect(Math.max(...means) / Math.min(...means)).toBeLessThan(1.1);
	});

	it('has a ride without speed, which is refused', async () => {
		const refused = await outcome(rideNoted(/no speed/).file);
		expect(refused).toBeInstanceOf(RideRefused);
		expect((refused as RideRefused).code).toBe('no-speed');
	});

	it('has a ride with gaps, one cut off, one from satellites and one on a trainer', async () => {
		expect(((await outcome(rideNoted(/lost its records/).file)) as Ride).gaps.length).toBeGreaterThan(0);
		const cut = (await outcome(rideNoted(/middle of a record/).file)) as Ride;
		expect(cut.warnings.map((warning) => warning.code)).toContain('file-cut-off');
		expect(((await outcome(rideNoted(/satellites only/).file)) as Ride).speedSource).toBe('position');
		const trainer = programme.rides.filter((ride) => ride.trainer);
		expect(trainer.length).toBe(1);
		expect(((await outcome(trainer[0].file)) as Ride).trainer).toBe(true);
	});

	it('has one recording twice, wet rides, recorded shifts on some rides and laps on those that were felt', async () => {
		const twice = programme.rides.filter((ride) => ride.sameAs);
		expect(twice.length).toBe(1);
		expect(hash(read(twice[0].file))).toBe(hash(read(twice[0].sameAs!)));
		expect(programme.rides.filter((ride) => ride.wet).length).toBe(3);
		const recorded = [];
		let laps = 0;
		for (const { file, wheel } of programme.rides) {
			const ride = await outcome(file);
			if (ride instanceof RideRefused) continue;
			laps += ride.marks.length;
			recorded.push([wheel, ride.gearEvents.length > 0]);
		}
		expect(recorded.every(([wheel, shifts]) => shifts === (wheel === 'W1'))).toBe(true);
		expect(laps).toBeGreaterThan(50);
	});

	it('states a truth that agrees with the files: distance, laps and the instants of events', async () => {
		const offGear: number[] = [];
		for (const [name, told] of Object.entries(truth)) {
			const ride = await outcome(told.file);
			if (ride instanceof RideRefused) continue;
			const distance = ride.channels.distanceM?.value ?? new Float64Array();
			const recordedKm = distance[distance.length - 1] / 1000;
			expect([name, Math.abs(recordedKm / told.km - 1) < 0.02]).toEqual([name, true]);
			expect([name, ride.marks.map((mark) => mark.timeS)]).toEqual([name, [...new Set(told.riderMarksAt)]]);
			for (const event of told.events) {
				expect(event.t1).toBeGreaterThan(event.t0);
				expect(event.t1).toBeLessThanOrEqual(ride.durationS);
				offGear.push(Math.abs((event.hubDeg * event.rear) / (event.crankDeg * event.front) - 1));
			}
		}
		// an event during a shift happens between two gears; the others in the gear that is stated
		expect(offGear.filter((off) => off > 0.02).length).toBeLessThan(0.05 * offGear.length);
		expect(Math.max(...offGear)).toBeLessThan(0.3);
	});

	it('is read alike by a second, independent decoder', async () => {
		for (const file of ['2026-04-22-w1-r1.fit', '2026-05-12-w3-r3.fit', '2026-06-03-w2-r1.fit']) {
			const ride = (await outcome(file)) as Ride;
			const other = secondDecoder(read(file));
			for (const name of ['speedMps', 'cadenceRpm', 'powerW', 'distanceM'] as const) {
				const ours = ride.channels[name]!;
				expect(Array.from(ours.timeS)).toEqual(other.timeS);
				const worst = other.channels[name].reduce(
					(largest, value, i) => Math.max(largest, Math.abs(value - ours.value[i])),
					0
				);
				expect([file, name, worst < 1e-9]).toEqual([file, name, true]);
			}
		}
	});

	it('comes out of the generator again byte for byte', () => {
		const again = generateSampleSet(undefined, 2);
		expect(again.files.size).toBe(2);
		for (const [name, bytes] of again.files) expect([name, hash(bytes)]).toEqual([name, hash(read(name))]);
		for (const [name, told] of Object.entries(again.truth)) expect(told).toEqual(truth[name]);
	});
});
