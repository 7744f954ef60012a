import { simulateRide } from './generator/simulateRide';
import type { RideTruth, SimulatedRide } from './generator/simulatedRide';
import { writeFit } from './generator/writeFit';
import type { Programme, ProgrammeRide } from './programme';
import { WHEELS } from './workshop/bikes';
import { BUILDS } from './workshop/hardware';
import { rideSpecOf } from './workshop/rideSpecOf';
import { RIDERS } from './workshop/riders';
import { FITTED_PERIODS, SCHEDULE, type PlannedRide } from './workshop/schedule';

/** Seed of the committed set: ride i is simulated with SEED + i. */
export const SEED = 20260519;

/** Share of the ride after which the one file that is cut off ends. */
const CUT_OFF_SHARE = 0.72;

export interface SampleSet {
	readonly files: ReadonlyMap<string, Uint8Array>;
	readonly programme: Programme;
	/** by ride name; the second copy of a file has no entry of its own */
	readonly truth: Readonly<Record<string, RideTruth>>;
}

/**
 * Makes the example workshop: ride files, programme and truth. Nothing is read or written.
 *
 * @param seed integer; SEED gives the committed set
 * @param wanted only the first so many rides
 * @returns the files by name, and what programme.json and truth.json hold
 */
export function generateSampleSet(seed = SEED, wanted = SCHEDULE.length): SampleSet {
	const files = new Map<string, Uint8Array>();
	const truth: Record<string, RideTruth> = {};
	const rides: ProgrammeRide[] = [];
	const kmOf = new Map<string, number>();
	SCHEDULE.slice(0, wanted).forEach((plan, i) => {
		const age = `${plan.wheel} ${plan.build}`;
		const spec = rideSpecOf(plan, kmOf.get(age) ?? 0);
		const simulated = simulateRide(spec, seed + i);
		kmOf.set(age, (kmOf.get(age) ?? 0) + simulated.truth.km);
		let bytes = writeFit(simulated.ride);
		truth[spec.name] = simulated.truth;
		if (plan.peculiarity === 'cut off') {
			const endS = Math.floor(simulated.ride.durationS * CUT_OFF_SHARE);
			bytes = cutOff(bytes, spec.startedAtMs / 1000 + endS);
			truth[spec.name] = cutTruth(simulated, endS);
		}
		files.set(`${spec.name}.fit`, bytes);
		rides.push(tell(plan, `${spec.name}.fit`, null));
		if (plan.peculiarity === 'twice') {
			files.set(`${spec.name}-again.fit`, bytes);
			rides.push(tell(plan, `${spec.name}-again.fit`, `${spec.name}.fit`));
		}
	});
	return { files, truth, programme: programmeOf(rides) };
}

/** Cuts the file in the middle of the record of this instant (seconds since 1970). */
function cutOff(bytes: Uint8Array, atS: number): Uint8Array {
	const stamp = new DataView(new ArrayBuffer(4));
	stamp.setUint32(0, atS - 631065600, true);
	const wanted = [0, 1, 2, 3].map((i) => stamp.getUint8(i));
	for (let i = 14; i < bytes.length - 4; i++)
		if (bytes[i - 1] === 0 && wanted.every((byte, k) => bytes[i + k] === byte)) return bytes.slice(0, i + 9);
	throw new Error('no record at the instant at which the file is to be cut off');
}

/** What is left of the truth when the recording ends early. */
function cutTruth({ truth, motion }: SimulatedRide, endS: number): RideTruth {
	const km = motion.groundM[Math.round(endS / motion.stepS)] / 1000;
	return {
		...truth,
		km: Math.round(km * 100) / 100,
		drivenKm: Math.round(((truth.drivenKm * km) / truth.km) * 100) / 100,
		riderMarksAt: truth.riderMarksAt.filter((mark) => mark < endS),
		events: truth.events.filter((event) => event.t1 < endS)
	};
}

const NOTES: Readonly<Record<NonNullable<PlannedRide['peculiarity']>, string>> = {
	'no speed': 'The speed sensor was left at home and satellites were off: no speed was recorded.',
	gaps: 'The device lost its records for some minutes.',
	'cut off': 'The file ends in the middle of a record: the battery was empty.',
	twice: 'Sent in twice by mistake.',
	satellites: 'Speed from satellites only: the sensor had no battery.'
};

function tell(plan: PlannedRide, file: string, sameAs: string | null): ProgrammeRide {
	return {
		file,
		wheel: plan.wheel,
		build: plan.build,
		rider: plan.rider,
		surface: plan.surface,
		wet: plan.wet ?? false,
		trainer: plan.surface === 'indoors',
		sameAs,
		note: plan.peculiarity ? NOTES[plan.peculiarity] : null
	};
}

function programmeOf(rides: readonly ProgrammeRide[]): Programme {
	return {
		invented:
			'Everything here is invented: the workshop, its wheels, builds, riders and rides. The rides are simulated; the track lies in the open sea.',
		workshop: { name: 'Example workshop (invented)', timeZone: 'Europe/Berlin' },
		riders: Object.keys(RIDERS).map((code) => ({ code, lapsMeanSlips: true })),
		wheels: WHEELS.map((wheel) => wheel.told),
		builds: BUILDS.map((build) => build.told),
		fittedPeriods: FITTED_PERIODS,
		rides
	};
}
