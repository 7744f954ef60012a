import { describe, expect, it } from 'vitest';
import { PLAUSIBLE } from '$lib/ride/plausible';
import { RideRefused, type ChannelName, type Ride } from '$lib/ride/ride';
import { event, FIT, fitRide, lap, PEDALLING, recordFields, seconds, timestamp } from './fitBytes';
import { decode } from './rides';

/** a seeded generator of whole numbers (Park and Miller 1988, minimal standard) */
function seeded(seed: number): (below: number) => number {
	let state = seed;
	return (below) => {
		state = (state * 48_271) % 2_147_483_647;
		return state % below;
	};
}

const ride = fitRide({
	seconds: [...seconds(60), ...seconds(60, 90)],
	values: (second) => ({
		...PEDALLING,
		distanceM: 8 * second,
		altitudeM: 100,
		latitudeDeg: -47,
		longitudeDeg: -24
	}),
	also: (bytes) => {
		event(bytes, 60, 0, 4);
		event(bytes, 89, 0, 0);
		event(bytes, 95, 43, 3, 5 + 21 * 256 + 2 * 65536 + 34 * 16777216);
		lap(bytes, 70, 0);
		bytes.message(5, 23, [
			[0, FIT.uint8, 1],
			[1, FIT.uint8, 123],
			[27, FIT.string, 'hub']
		]);
		bytes.message(6, 206, [
			[0, FIT.uint8, 0],
			[1, FIT.uint8, 0],
			[2, FIT.uint8, 2],
			[3, FIT.string, 'power']
		]);
		bytes.message(7, 20, [timestamp(160), ...recordFields(PEDALLING)], [[0, [7], 0]]);
		bytes.compressed(
			1,
			161,
			recordFields({ ...PEDALLING, distanceM: 1, altitudeM: 1, latitudeDeg: 1, longitudeDeg: 1 })
		);
	}
}).close();

const text = (content: string) => new TextEncoder().encode(content);
const tcx = text(
	'<?xml version="1.0"?><TrainingCenterDatabase><Activities><Activity Sport="Biking"><Lap StartTime="2026-05-04T08:00:00Z">' +
		`<TriggerMethod>Manual</TriggerMethod><Track>${seconds(50)
			.map(
				(second) =>
					`<Trackpoint><Time>2026-05-04T08:00:${String(second).padStart(2, '0')}Z</Time><DistanceMeters>${8 * second}` +
					'</DistanceMeters><Cadence>85</Cadence><Extensions><TPX><Speed>8</Speed><Watts>190</Watts></TPX></Extensions></Trackpoint>'
			)
			.join('')}</Track></Lap></Activity></Activities></TrainingCenterDatabase>`
);
const gpx = text(
	`<?xml version="1.0"?><gpx><trk><type>cycling</type><trkseg>${seconds(50)
		.map(
			(second) =>
				`<trkpt lat="${-47 + second / 9000}" lon="-24"><time>2026-05-04T08:00:${String(second).padStart(2, '0')}Z</time>` +
				'<extensions><cad>85</cad><power>190</power></extensions></trkpt>'
		)
		.join('')}</trkseg></trk></gpx>`
);
const logger = text(
	`time_s,crank_rpm,wheel_rpm,crank_torque_nm\n${seconds(100)
		.map((i) => `${i / 50},80,240,${20 + (i % 7)}\n`)
		.join('')}`
);

/** a ride that keeps the promises of its type, or a refusal: nothing else may come out */
async function outcome(bytes: Uint8Array): Promise<'ride' | 'refused'> {
	let read: Ride;
	try {
		read = await decode(bytes);
	} catch (error) {
		if (error instanceof RideRefused && error.sentence !== '' && error.detail !== '') return 'refused';
		throw error;
	}
	for (const [name, channel] of Object.entries(read.channels)) {
		const [low, high] = PLAUSIBLE[name as ChannelName];
		if (channel.timeS.length !== channel.value.length) throw new Error(`${name}: lengths differ`);
		for (let i = 0; i < channel.timeS.length; i++) {
			if (i > 0 && !(channel.timeS[i] > channel.timeS[i - 1])) throw new Error(`${name}: time stands still`);
			const value = channel.value[i];
			// distance is a running sum and may grow past what one record may state
			const fits = value >= low && (value <= high || name === 'distanceM');
			if (!Number.isNaN(value) && !fits) throw new Error(`${name}: ${value}`);
		}
	}
	if (!(read.durationS >= 0) || !Number.isFinite(read.startedAtMs)) throw new Error('no finite clock');
	for (const { timeS } of [...read.marks, ...read.gearEvents]) {
		if (!(timeS >= 0 && timeS <= read.durationS)) throw new Error(`a mark or shift at ${timeS} s`);
	}
	for (const [startS, endS] of [...read.gaps, ...read.pauses]) {
		if (!(startS >= 0 && startS <= endS && endS <= read.durationS))
			throw new Error(`span ${startS} to ${endS}`);
	}
	return 'ride';
}

async function tally(count: number, damaged: (pick: (below: number) => number) => Uint8Array, seed: number) {
	const pick = seeded(seed);
	const seen = { ride: 0, refused: 0 };
	for (let i = 0; i < count; i++) seen[await outcome(damaged(pick))]++;
	return seen;
}

describe('damaged bytes end as a ride within its bounds or as a refusal', { timeout: 60_000 }, () => {
	it.each([
		['FIT', ride, 1500, 11],
		['TCX', tcx, 300, 12],
		['GPX', gpx, 300, 16],
		['logger CSV', logger, 500, 13]
	] as const)('%s with one to eight bytes changed', async (_, sound, count, seed) => {
		const seen = await tally(
			count,
			(pick) => {
				const bytes = Uint8Array.from(sound);
				for (let flips = 1 + pick(8); flips > 0; flips--) bytes[pick(bytes.length)] = pick(256);
				return bytes;
			},
			seed
		);
		expect(seen.ride + seen.refused).toBe(count);
		expect(seen.ride).toBeGreaterThan(count / 10);
	});

	it('FIT with single bits turned over in its head, definitions and first records', async () => {
		for (let at = 0; at < 120; at++) {
			for (let bit = 0; bit < 8; bit++) {
				const bytes = Uint8Array.from(ride);
				bytes[at] ^= 1 << bit;
				expect(await outcome(bytes)).toMatch(/ride|refused/);
			}
		}
	});

	it.each([
		['FIT', ride, 7],
		['TCX', tcx, 37],
		['GPX', gpx, 37],
		['logger CSV', logger, 7]
	] as const)('%s cut off at every so many bytes', async (_, sound, step) => {
		let rides = 0;
		for (let length = 0; length < sound.length; length += step) {
			if ((await outcome(sound.subarray(0, length))) === 'ride') rides++;
		}
		expect(rides).toBeGreaterThan(sound.length / step / 2);
	});

	it('FIT with a stretch removed, doubled or filled with noise', async () => {
		const seen = await tally(
			600,
			(pick) => {
				const from = pick(ride.length);
				const to = Math.min(ride.length, from + 1 + pick(200));
				const stretch = ride.subarray(from, to);
				const middle = [[], [...stretch, ...stretch], Array.from(stretch, () => pick(256))][pick(3)];
				return Uint8Array.from([...ride.subarray(0, from), ...middle, ...ride.subarray(to)]);
			},
			14
		);
		expect(seen.ride).toBeGreaterThan(60);
		expect(seen.ride + seen.refused).toBe(600);
	});

	it('noise behind a sound header', async () => {
		const seen = await tally(
			300,
			(pick) => {
				const bytes = Uint8Array.from({ length: 400 }, () => pick(256));
				bytes.set(ride.subarray(0, 14));
				return bytes;
			},
			15
		);
		expect(seen.refused).toBeGreaterThan(290);
	});
});
