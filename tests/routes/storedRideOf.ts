import type { Ride } from '../../src/lib/ride/ride';
import type { RideTruth } from '../../sample-rides/generator/simulatedRide';
import type { StoredRide } from '../../src/routes/method/workedRide';

/** The ride, the length and the slip that the method page works through. */
export const WORKED_FILE = '2026-05-02-w1-r1.fit';
const SECONDS = 1800;
const SLIP_AT_S = 1201.5;

/** Cuts the first half hour out of a ride of the example workshop, as the method page keeps it. */
export function storedRideOf(ride: Ride, truth: RideTruth): StoredRide {
	const slip = truth.events.find(({ t0 }) => t0 === SLIP_AT_S);
	if (!slip) throw new Error(`the ride has no slip at ${SLIP_AT_S} s: choose another and say so`);
	const column = (name: 'speedMps' | 'cadenceRpm' | 'powerW', scale: number) => {
		const out: number[] = new Array(SECONDS).fill(-1);
		const { timeS, value } = ride.channels[name]!;
		timeS.forEach((second, i) => {
			if (second < SECONDS && !Number.isNaN(value[i])) out[second] = Math.round(value[i] * scale);
		});
		return out;
	};
	return {
		about:
			'Invented: the first half hour of a generated ride of the example workshop. Made anew by npx tsx tests/routes/writeWorkedRide.ts',
		file: WORKED_FILE,
		bike: {
			chainrings: truth.chainrings,
			cassette: truth.cassette,
			circumferenceM: truth.circumferenceSetting,
			speedSensor: 'rear'
		},
		truth: {
			t0: slip.t0,
			t1: slip.t1,
			crankDeg: slip.crankDeg,
			hubDeg: slip.hubDeg,
			hubTorqueNm: slip.hubTorqueNm,
			gear: `${slip.front}/${slip.rear}`
		},
		speedMmps: column('speedMps', 1000),
		cadenceRpm: column('cadenceRpm', 1),
		powerW: column('powerW', 1)
	};
}
