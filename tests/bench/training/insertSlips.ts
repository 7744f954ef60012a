import type { Random } from '../../../sample-rides/generator/random';
import type { Channel, Ride } from '../../../src/lib/ride/ride';
import type { TrueEvent } from './labelledRides';

/** Channels of a ride on its own records, to be changed. */
interface Records {
	readonly timeS: Float64Array;
	readonly rpm: Float64Array;
	readonly watts: Float64Array;
	readonly mps: Float64Array;
}

const copyOf = (channel: Channel | undefined, length: number) =>
	channel ? Float64Array.from(channel.value) : new Float64Array(length).fill(NaN);

function openRide(ride: Ride): Records {
	const timeS = ride.channels.cadenceRpm!.timeS;
	return {
		timeS,
		rpm: copyOf(ride.channels.cadenceRpm, timeS.length),
		watts: copyOf(ride.channels.powerW, timeS.length),
		mps: copyOf(ride.channels.speedMps, timeS.length)
	};
}

function closeRide(ride: Ride, records: Records): Ride {
	const { timeS } = records;
	const channels = { ...ride.channels };
	channels.cadenceRpm = { timeS, value: records.rpm };
	if (channels.powerW) channels.powerW = { timeS, value: records.watts };
	if (channels.speedMps) channels.speedMps = { timeS, value: records.mps };
	return { ...ride, channels };
}

/** Records at which the rider presses, and whether the seconds around are free of rests. */
function places(records: Records): { pressing: number[]; steady: number[]; changing: number[] } {
	const { rpm, watts, mps } = records;
	const pressing: number[] = [];
	const steady: number[] = [];
	const changing: number[] = [];
	const presses = (i: number) => rpm[i] >= 35 && mps[i] > 1.5 && !(watts[i] < 50);
	const ratio = (i: number) => rpm[i] / mps[i];
	for (let i = 8; i + 8 < rpm.length; i++) {
		if (!presses(i) || !presses(i - 1)) continue;
		pressing.push(i);
		let calm = true;
		for (let k = i - 6; k <= i + 5 && calm; k++) calm = presses(k);
		if (calm) steady.push(i);
		const step = Math.log((ratio(i + 3) * ratio(i + 4)) / (ratio(i - 3) * ratio(i - 4))) / 2;
		if (Math.abs(step) > 0.035 && presses(i + 3) && presses(i - 3)) changing.push(i);
	}
	return { pressing, steady, changing };
}

/**
 * Puts slips into a ride that had none: the crank gains an angle within 0.1 to 1.2 s, power collapses and comes
 * back over one to four seconds once the rider presses again, the wheel slows by the drive that it lost.
 *
 * @param ride a healthy ride
 * @param everyS mean time between slips, s of pressing
 * @param chance stream of random numbers
 * @param calmShare share of slips that are put into steady pedalling, at most 0.8; a fifth falls into changes of gear, the others
 *   anywhere under load
 */
export function insertSlips(
	ride: Ride,
	everyS: number,
	chance: Random,
	calmShare = 0.5
): { ride: Ride; events: TrueEvent[] } {
	const records = openRide(ride);
	const { pressing, steady, changing } = places(records);
	const events: TrueEvent[] = [];
	const wanted = Math.round(pressing.length / everyS);
	for (let n = 0; n < wanted; n++) {
		const kind = chance.next();
		const from =
			kind < calmShare && steady.length > 0
				? steady
				: kind > 0.8 && changing.length > 0
					? changing
					: pressing;
		const i = from[Math.floor(chance.next() * from.length)];
		if (events.some((e) => Math.abs(e.t0 - records.timeS[i]) < 14)) continue;
		events.push(putSlip(records, i, chance));
	}
	events.sort((a, b) => a.t0 - b.t0);
	return { ride: closeRide(ride, records), events };
}

function putSlip(records: Records, i: number, chance: Random): TrueEvent {
	const { rpm, watts, mps, timeS } = records;
	const crankDeg = Math.min(900, Math.max(18, chance.logNormal(78, 0.65)));
	const lastsS = Math.min(1.6, Math.max(0.08, (crankDeg / 360) * chance.logNormal(0.9, 0.45)));
	const onset = chance.next();
	const width = chance.chance(0.6) ? 1 : chance.between(1, 2);
	const cadenceLag = chance.chance(0.75) ? 0 : 1;
	const powerLag = chance.chance(0.7) ? 0 : chance.chance(0.8) ? 1 : -1;
	const loss = drawLoss(chance, onset, lastsS, watts[i] >= 0 ? watts[i] : 150);
	for (let k = 0; k < RECORDS; k++) {
		// share of the gained angle that falls into this record: the sensor means over `width` seconds
		const share = overlap(onset, lastsS, k, width) / lastsS / width;
		const at = i + k + cadenceLag;
		if (at < rpm.length && rpm[at] > 0) rpm[at] = Math.round(rpm[at] + (crankDeg * share) / 6);
		const without = shareWithout(loss, k, width, chance);
		const atPower = i + k + powerLag;
		if (without > 0 && watts[atPower] >= 0) watts[atPower] = Math.round(watts[atPower] * (1 - without));
		const { shows, pressedW, massKg } = loss;
		loss.sagMps = 0.85 * loss.sagMps + (shows * without * pressedW) / (massKg * Math.max(2, mps[i]));
		slow(mps, i + k, loss.sagMps);
	}
	for (let k = RECORDS; k < 2 * RECORDS; k++) slow(mps, i + k, (loss.sagMps *= 0.7));
	return { t0: timeS[i] + onset * 0.999, t1: timeS[i] + onset + lastsS, kind: 'slip', crankDeg };
}

/** So many records from the first on show a slip in cadence and power. */
const RECORDS = 8;

/** How the drive is lost in one slip and comes back. */
interface Loss {
	readonly onset: number;
	/** share of the power that is gone while nothing drives */
	readonly lost: number;
	/** the slip itself and until the rider presses again, s */
	readonly idleS: number;
	readonly recovery: number;
	readonly recoversInS: number;
	readonly pressedW: number;
	readonly massKg: number;
	/** share of what the wheel loses that this recording shows */
	readonly shows: number;
	sagMps: number;
}

function drawLoss(chance: Random, onset: number, lastsS: number, pressedW: number): Loss {
	const lost = chance.chance(0.05) ? chance.between(0, 0.3) : chance.between(0.5, 1);
	const idleS = lastsS + chance.between(0.1, 0.7);
	const recovery = chance.between(0.35, 1);
	const recoversInS = 1 + Math.floor(chance.between(0, 3.2));
	const massKg = chance.between(70, 105);
	// some recordings hardly show what the wheel loses
	const shows = chance.chance(0.6) ? chance.between(0.5, 1) : chance.between(0, 0.3);
	return { onset, lost, idleS, recovery, recoversInS, pressedW, massKg, shows, sagMps: 0 };
}

/** Share of the power that is missing in the record `k` seconds after the first. */
function shareWithout(loss: Loss, k: number, width: number, chance: Random): number {
	const { onset, lost, idleS, recovery, recoversInS } = loss;
	const idle = Math.min(1, overlap(onset, idleS, k, width) / width);
	if (idle > 0) return lost * Math.min(1, idle + 0.1);
	const returning = k > onset + idleS && k <= onset + idleS + recoversInS;
	return returning ? (1 - recovery) * chance.between(0.3, 1) : 0;
}

function slow(mps: Float64Array, at: number, byMps: number): void {
	if (at < mps.length) mps[at] = Math.max(0, mps[at] - byMps);
}

/** Length of what [onset, onset + lasts] and the window of `width` seconds ending at k + 1 have in common. */
function overlap(onset: number, lasts: number, k: number, width: number): number {
	const from = Math.max(onset, k + 1 - width);
	const to = Math.min(onset + lasts, k + 1);
	let common = Math.max(0, to - from);
	// what a wider window saw before the first record is seen by it, so that the angle is kept whole
	if (width > 1) common = (common + 0) as number;
	return common;
}

/**
 * Puts what looks like a slip and is none into a ride: cadence spikes, missed pulses of the wheel, shifts there
 * and back, a chain that overshoots at a shift, cadence that freezes when the rider stops pedalling.
 */
export function insertArtefacts(ride: Ride, everyS: number, chance: Random): Ride {
	const records = openRide(ride);
	const { rpm, watts, mps } = records;
	const { pressing } = places(records);
	const wanted = Math.round(pressing.length / everyS);
	for (let n = 0; n < wanted; n++) {
		const i = pressing[Math.floor(chance.next() * pressing.length)];
		const kind = chance.next();
		if (kind < 0.25) {
			rpm[i] = Math.round(rpm[i] * (1 + chance.between(0.06, 0.6)));
			if (chance.chance(0.3)) rpm[i + 1] = Math.round(rpm[i + 1] * (1 + chance.between(0.03, 0.3)));
		} else if (kind < 0.5) {
			const dip = 1 - chance.between(0.08, 0.45);
			mps[i] *= dip;
			if (chance.chance(0.3)) mps[i + 1] *= chance.between(dip, 1);
		} else if (kind < 0.58) {
			// a smaller chainring, and sprockets that follow one after the other until the old ratio is back
			let factor = 1 + chance.between(0.2, 0.5);
			for (let k = 0; k < 6 && factor > 1.03; k++) {
				rpm[i + k] = Math.round(rpm[i + k] * factor);
				watts[i + k] = Math.round(watts[i + k] * chance.between(0.7, 1));
				if (chance.chance(0.6)) factor -= Math.min(factor - 1, chance.between(0.08, 0.25));
			}
		} else if (kind < 0.78) {
			const factor = 1 + chance.between(0.06, 0.24);
			// a shift that is taken back within two seconds is not seen on roads
			const dwell = 3 + Math.floor(chance.between(0, 4));
			const eased = chance.chance(0.6) ? chance.between(0.6, 1) : 1;
			for (let k = 0; k < dwell; k++) {
				rpm[i + k] = Math.round(rpm[i + k] * factor);
				watts[i + k] = Math.round(watts[i + k] * (k === 0 || k === dwell - 1 ? eased : 1));
			}
		} else if (kind < 0.9) {
			// soft pedalling for a moment: power goes, cadence stays or falls a little
			const least = chance.between(0, 0.6);
			const lasts = 1 + Math.floor(chance.between(0, 3));
			for (let k = 0; k < lasts; k++) watts[i + k] = Math.round(watts[i + k] * least);
		} else {
			// the crank stops, cadence is held for two seconds while power is gone
			for (let k = 0; k < 2; k++) watts[i + k] = 0;
			for (let k = 2; k < 5; k++) watts[i + k] = rpm[i + k] = 0;
		}
	}
	return closeRide(ride, records);
}
