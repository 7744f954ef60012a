import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { analyseBytes } from '../../src/jobs/analysis/analyseBytes';
import { unpackValues } from '../../src/jobs/analysis/unpackValues';
import { inflateRawSync } from 'node:zlib';
import { channelBytes } from '../../src/lib/server/rides/channelBytes';
import { recordedGear } from '../../src/lib/server/rides/recordedGear';
import type { RideView } from '../../src/lib/server/views';
import { project } from '../faults/runCommand';

/** What the page of a ride gets: its view (as far as drawings read it) and its traces. */
export interface DrawRide {
	readonly view: Partial<RideView>;
	readonly channels: Uint8Array;
}

/**
 * A ride of the example, ridden again and again until it is long enough: as many marks, shifts, unobserved
 * stretches and changes of state a second as a ride on the road has.
 *
 * @param hours length
 */
export async function drawRide(hours: number): Promise<DrawRide> {
	const name = '2026-04-22-w1-r1.fit';
	const file = await analyseBytes(readFileSync(join(project, 'sample-rides', name)), name);
	const seconds = hours * 3600;
	const once = file.channels[0].length;
	const rounds = Math.ceil(seconds / once);
	const again = <T>(of: (offsetS: number) => readonly T[]) =>
		Array.from({ length: rounds }, (_, round) => of(round * once)).flat();
	const channels = file.channels.map((channel) => {
		const values = new Float32Array(once);
		let at = 0;
		for (const { level, count, packed } of channel.chunks) {
			if (level !== 0) continue;
			unpackValues(inflateRawSync(packed), channel.step, values, at, count);
			at += count;
		}
		const grows = channel.name === 'distanceM' || channel.name === 'gainedHubDeg';
		const long = Float32Array.from(
			{ length: seconds },
			(_, i) => values[i % once] + (grows ? Math.floor(i / once) * values[once - 1] : 0)
		);
		return { name: channel.name, values: long };
	});
	const view = {
		durationS: seconds - 1,
		eventList: again((offsetS) =>
			file.events.map((event) => ({
				...event,
				startS: event.startS + offsetS,
				endS: event.endS + offsetS,
				verdict: null
			}))
		).map((event, index) => ({ ...event, id: index + 1 })),
		observedStretches: again((offsetS) =>
			file.observed.map((stretch) => ({
				...stretch,
				startS: stretch.startS + offsetS,
				endS: stretch.endS + offsetS
			}))
		).filter(({ startS }) => startS < seconds),
		marksS: again((offsetS) => file.detail.marksS.map((timeS) => timeS + offsetS)),
		shifts: again((offsetS) =>
			(file.detail.shifts ?? []).map((shift) => ({
				timeS: shift.timeS + offsetS,
				gear: recordedGear(shift)
			}))
		),
		gaps: [[1000, 1060]],
		gears: file.detail.gears,
		stepHubDeg: 15
	} as unknown as Partial<RideView>;
	return { view, channels: channelBytes({ length: seconds, channels }) };
}
