/**
 * Prints what a detector that had not seen the ride missed and where it raised a false alarm, with the seconds around:
 *
 *   npx tsx tests/bench/training/train.ts --judge --scores FILE     once; takes long
 *   npx tsx tests/bench/training/showMisses.ts FILE [NAME]          as often as wanted; NAME = part of a ride's name
 */
import { readFileSync } from 'node:fs';
import { driveSignals } from '../../../src/lib/drivetrain/driveSignals';
import { DEFAULT_CIRCUMFERENCE_M } from '../../../src/lib/drivetrain/nameGears';
import { secondGrid } from '../../../src/lib/drivetrain/secondGrid';
import { LEAST_LOG_ODDS } from '../../../src/lib/slip/reportLimits';
import { rideContext, type RideContext } from '../../../src/lib/slip/rideContext';
import { keepStrongest } from './keepStrongest';
import type { KeptRide } from './keepScores';
import { labelledRides } from './labelledRides';
import { meanRecall } from './meanRecall';
import { missCause, surroundings } from './missCause';
import { addRide, emptyScore } from './scoreEvents';

const LEAST_DEG = 60;
/** False alarms below the limit are looked at too: there are few above it. */
const FALSE_FROM = 1;
const BEFORE_S = 9;
const AFTER_S = 11;

const [file, only = ''] = process.argv.slice(2);
const kept: KeptRide[] = JSON.parse(readFileSync(file, 'utf8')).rides;

for (const folder of ['simulated', 'real']) {
	const judged = kept.filter(({ group }) => group.startsWith(folder)).map(opened);
	console.log(
		`${folder}: mean recall over a row of false-alarm rates ${(100 * meanRecall(judged)).toFixed(1)} %`
	);
	for (const labelled of await labelledRides(folder)) {
		const one = judged.find(({ part }) => part.name === labelled.name);
		if (!one || !labelled.name.includes(only)) continue;
		const grid = secondGrid(labelled.ride, labelled.bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M);
		show(one, rideContext(driveSignals(grid), labelled.bike));
	}
}

function opened({ candidates, ...ride }: KeptRide) {
	return {
		part: {
			...ride,
			startS: candidates.map(({ startS }) => startS),
			sizeDeg: candidates.map(({ sizeDeg }) => sizeDeg),
			overrunDeg: candidates.map(({ overrunDeg }) => overrunDeg),
			rows: candidates.map(({ features }) => Float64Array.from(features, (value) => value ?? NaN))
		},
		logOdds: candidates.map(({ logOdds }) => logOdds)
	};
}

function show({ part, logOdds }: ReturnType<typeof opened>, context: RideContext) {
	const above = (least: number) =>
		addRide(emptyScore(), part.events, part.km, keepStrongest(part, logOdds, least), [], 0, 0);
	for (const slip of above(LEAST_LOG_ODDS).missed) {
		if (slip.crankDeg < LEAST_DEG) continue;
		const cause = missCause(slip, part, logOdds, LEAST_LOG_ODDS);
		seconds(
			context,
			slip.t0,
			`${part.name}: missed ${slip.crankDeg.toFixed(0)} degrees at ${slip.t0} s, ${cause}`
		);
	}
	for (const { startS, strength } of above(FALSE_FROM).wrong) {
		const cause = surroundings(part.rows[part.startS.indexOf(startS)]);
		seconds(context, startS, `${part.name}: false at ${startS} s, log odds ${strength.toFixed(2)}, ${cause}`);
	}
}

function seconds({ signals, recordedRatios, path, ratios }: RideContext, atS: number, title: string) {
	const { grid } = signals;
	const from = Math.max(0, Math.floor(atS) - BEFORE_S);
	const to = Math.min(grid.seconds - 1, Math.floor(atS) + AFTER_S);
	const line = (name: string, value: (t: number) => number, digits: number) => {
		let text = name.padEnd(22);
		for (let t = from; t <= to; t++)
			text += (value(t) === value(t) ? value(t).toFixed(digits) : '-').padStart(7);
		console.log(text);
	};
	console.log(`\n${title}`);
	line('second', (t) => t, 0);
	line('speed m/s', (t) => signals.speedMps[t], 2);
	line('cadence rpm', (t) => grid.cadenceRpm[t], 0);
	line('power W', (t) => grid.powerW[t], 0);
	line('ln turns a metre', (t) => signals.logRatio[t], 3);
	line('gear followed', (t) => ratios[path[t]]?.logRatio ?? NaN, 3);
	if (grid.shiftS.length > 0) line('gear recorded', (t) => recordedRatios[grid.gearCode[t]] ?? NaN, 3);
}
