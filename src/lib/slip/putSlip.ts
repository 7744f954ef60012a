import type { Channel, Ride } from '$lib/ride/ride';
import type { Chance } from './seededChance';

/** A slip to be put into a recording, and how its sensors would have shown it. */
export interface SlipToPut {
	/** seconds from the first record */
	readonly startS: number;
	/** degrees that the crank gains on the wheel */
	readonly crankDeg: number;
	readonly lastsS: number;
	/** share of the power that is lost meanwhile, 0 to 1 */
	readonly powerLost: number;
	/** share of the power that is back at once; the rest comes within recoversInS */
	readonly recovery: number;
	readonly recoversInS: number;
	/** seconds over which a value of cadence or power is a mean: whole, so that the angle is kept whole */
	readonly cadenceOverS: number;
	readonly powerOverS: number;
	/** seconds by which cadence and power come late */
	readonly cadenceLagS: number;
	readonly powerLagS: number;
}

/** What of a ride is changed by slips; copies, so that the ride stays as it was. */
export interface RecordsToChange {
	readonly cadence: Channel;
	readonly power: Channel | null;
	readonly speed: Channel | null;
}

/** rider, bike and luggage, kg; common practice, no source */
const MASS_KG = 85;
/** what remains of the drive while pawls and rider find each other again, s */
const TAKE_UP_S = 0.25;

/** Copies what slips change of a ride; null for a recording without cadence. */
export function recordsToChange(ride: Ride): RecordsToChange | null {
	const { cadenceRpm, powerW, speedMps } = ride.channels;
	if (!cadenceRpm) return null;
	return {
		cadence: copyOf(cadenceRpm),
		power: powerW ? copyOf(powerW) : null,
		speed: speedMps ? copyOf(speedMps) : null
	};
}

function copyOf({ timeS, value }: Channel): Channel {
	return { timeS, value: Float64Array.from(value) };
}

/** The ride with the changed records in place of its own. */
export function withRecords(ride: Ride, { cadence, power, speed }: RecordsToChange): Ride {
	const channels = { ...ride.channels, cadenceRpm: cadence };
	if (power) channels.powerW = power;
	if (speed) channels.speedMps = speed;
	return { ...ride, channels };
}

/**
 * A slip of a given size with the rest of it drawn: most last under half a second and lose most of the power,
 * one in twelve loses little; sensors come up to a second late. Spreads as in the training of the detector
 * (estimates, no source).
 *
 * @param prompt false for a power meter that shows a mean over about three seconds
 */
export function drawSlip(startS: number, crankDeg: number, chance: Chance, prompt: boolean): SlipToPut {
	return {
		startS,
		crankDeg,
		lastsS: Math.min(1.6, Math.max(0.08, (crankDeg / 360) * chance.logNormal(0.9, 0.45))),
		powerLost: chance.chance(0.08) ? chance.between(0, 0.3) : chance.between(0.35, 1),
		recovery: chance.between(0.35, 1),
		recoversInS: 1 + Math.floor(chance.between(0, 3.2)),
		cadenceOverS: chance.chance(0.7) ? 1 : 2,
		powerOverS: prompt ? 1 : 3,
		cadenceLagS: chance.chance(0.75) ? 0 : 1,
		powerLagS: chance.chance(0.7) ? 0 : chance.chance(0.8) ? 1 : -1
	};
}

/**
 * Writes a slip into the records: the crank gains its angle, power collapses and comes back, the wheel sags by
 * the drive that it lost. A record that falls between does not show it: what a recording leaves out stays out.
 *
 * @param records changed in place
 * @param ease draws how far a record is from the full power while it comes back, 0 to 1
 */
export function putSlip(records: RecordsToChange, slip: SlipToPut, ease: () => number): void {
	const { startS, lastsS, crankDeg } = slip;
	const pressureW = valueAt(records.power, startS - 1);
	each(records.cadence, slip, (i, recordS) => {
		const rpm = records.cadence.value[i];
		if (!(rpm > 0)) return;
		const shareS = common(startS, lastsS, recordS - slip.cadenceLagS, slip.cadenceOverS) / slip.cadenceOverS;
		records.cadence.value[i] = like(rpm, rpm + (crankDeg * shareS) / lastsS / 6);
	});
	if (records.power) loseAndRegain(records.power, slip, ease);
	if (records.speed) sag(records.speed, slip, Number.isNaN(pressureW) ? 150 : pressureW);
}

function loseAndRegain(power: Channel, slip: SlipToPut, ease: () => number): void {
	const { startS, lastsS, powerOverS, powerLagS } = slip;
	each(power, slip, (i, recordS) => {
		const watts = power.value[i];
		if (!(watts > 0)) return;
		const at = recordS - powerLagS;
		const idle = Math.min(1, common(startS, lastsS + TAKE_UP_S, at, powerOverS) / powerOverS);
		const sinceS = at - startS - lastsS;
		if (idle > 0)
			power.value[i] = like(watts, watts * (1 - slip.powerLost * Math.min(1, idle + 0.15 / powerOverS)));
		else if (sinceS > 0 && sinceS <= slip.recoversInS)
			power.value[i] = like(watts, watts * (1 - (1 - slip.recovery) * ease()));
	});
}

/** Drive that was lost slows the wheel a little; it is back after about five seconds. */
function sag(speed: Channel, slip: SlipToPut, pressureW: number): void {
	const mps = Math.max(2, valueAt(speed, slip.startS));
	const lostMps = (pressureW / (MASS_KG * mps)) * slip.lastsS * slip.powerLost;
	each(speed, slip, (i, recordS) => {
		const sinceS = recordS + 1 - slip.startS;
		if (sinceS <= 0 || sinceS > 5 || !(speed.value[i] > lostMps)) return;
		speed.value[i] -= lostMps * Math.min(1, sinceS) * (1 - sinceS / 5);
	});
}

/** Calls for every record that the slip can reach. */
function each(
	{ timeS }: Channel,
	{ startS, lastsS }: SlipToPut,
	change: (i: number, recordS: number) => void
) {
	for (let i = firstFrom(timeS, startS - 3); i < timeS.length && timeS[i] <= startS + lastsS + 7; i++)
		change(i, timeS[i]);
}

/** Seconds that [start, start + lasts] has in common with the `overS` seconds that a record stands for. */
function common(startS: number, lastsS: number, recordS: number, overS: number): number {
	// a record stands for the second that begins with it, as on the grid of whole seconds
	const endS = recordS + 1;
	return Math.max(0, Math.min(startS + lastsS, endS) - Math.max(startS, endS - overS));
}

/** Whole numbers stay whole: many devices record nothing finer. */
function like(before: number, after: number): number {
	return Number.isInteger(before) ? Math.round(after) : after;
}

function valueAt(channel: Channel | null, timeS: number): number {
	return channel ? channel.value[Math.min(channel.value.length - 1, firstFrom(channel.timeS, timeS))] : NaN;
}

/** Index of the first record at or after an instant. */
function firstFrom(timeS: Float64Array, instantS: number): number {
	let low = 0;
	let high = timeS.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (timeS[middle] < instantS) low = middle + 1;
		else high = middle;
	}
	return low;
}
