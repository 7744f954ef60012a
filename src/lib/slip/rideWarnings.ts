import type { Bike } from '$lib/drivetrain/bike';
import type { LearnedCircumference } from '$lib/drivetrain/learnedCircumference';
import type { NamedGears } from '$lib/drivetrain/nameGears';
import type { RideLearning } from '$lib/drivetrain/rideLearning';
import type { Ride, RideWarning } from '$lib/ride/ride';
import type { RideContext } from './rideContext';
import { isCadenceHeld, isPowerSlow, type RideResponse } from './rideResponse';
import { speedFollowsHub } from './speedFollowsHub';

/** What the reader of this ride's results must know. */
export function rideWarnings(
	ride: Ride,
	context: RideContext,
	bike: Bike,
	named: NamedGears,
	learning: RideLearning
): RideWarning[] {
	const warnings: RideWarning[] = [];
	const warn = (code: string, sentence: string, detail = '') => warnings.push({ code, sentence, detail });
	if (ride.trainer) {
		warn('trainer', 'This was ridden on a trainer: nothing of it counts as observed distance.');
	}
	if (ride.motorAssisted) {
		warn('motor', 'A motor helps on this bike: nothing of this ride counts as observed distance.');
	}
	if (Number.isNaN(context.usualPowerW)) {
		warn(
			'no-power',
			'No power was recorded: a jump of the cadence alone is a weak sign, so nothing counts as observed.'
		);
	}
	if (isPowerSlow(context.response)) {
		warn(
			'slow-power',
			'The power meter reacts too slowly to show that drive was lost: what is found stands, but nothing counts as observed.',
			slowPowerSigns(context.response)
		);
	}
	if (isCadenceHeld(context.response)) {
		warn(
			'held-cadence',
			'Cadence was renewed every two or three seconds only: what is found stands, but nothing counts as observed.'
		);
	}
	if (ride.irregular) {
		warn('irregular', 'The device left out samples: a slip between two of them leaves no trace.');
	}
	if (!speedFollowsHub(ride, bike) && bike.speedSensor !== 'front') {
		warn(
			'speed-from-position',
			'Speed comes from satellite positions: a spinning tyre cannot be told from a slip, so nothing counts as observed.'
		);
	}
	if (bike.speedSensor === 'front') {
		warn(
			'front-speed',
			'Speed comes from the front wheel: a spinning rear tyre looks like a slip, so nothing counts as observed.'
		);
	}
	if (bike.chainrings && bike.cassette && !named.fitted) {
		warn('gears-do-not-fit', 'The stated chainrings and sprockets do not explain this ride: check the bike.');
	} else if (learning.circumference && isOff(learning.circumference, bike.circumferenceM)) {
		const { circumferenceM, lowerM, upperM } = learning.circumference;
		warn(
			'circumference',
			`The ride fits a wheel circumference of ${circumferenceM.toFixed(3)} m (90 % limits ${lowerM.toFixed(3)} to ${upperM.toFixed(3)} m) better than the stated ${bike.circumferenceM!.toFixed(3)} m.`
		);
	}
	for (const { code, sentence } of lookAlikes(ride, bike, learning)) warn(code, sentence);
	return warnings;
}

/** More than 1 % beside what is stated, and not within the limits. */
function isOff(learned: LearnedCircumference, statedM: number | undefined): boolean {
	if (!statedM) return false;
	const within = learned.lowerM <= statedM && statedM <= learned.upperM;
	return !within && Math.abs(learned.circumferenceM / statedM - 1) > 0.01;
}

/** What the ride looks like and nobody said: a person decides, nothing is left out because of it. */
function lookAlikes(ride: Ride, bike: Bike, learning: RideLearning) {
	const found: { code: string; sentence: string }[] = [];
	if (learning.looksLikeTrainer && ride.trainer === null) {
		found.push({
			code: 'looks-like-trainer',
			sentence: 'This looks like a ride on a trainer: the speed follows the power alone. Was it?'
		});
	}
	if (learning.looksLikeMotor && ride.motorAssisted === null) {
		found.push({
			code: 'looks-like-motor',
			sentence:
				'This looks like a ride with a motor: speed and height were gained with less power than their mass needs. Was it?'
		});
	}
	if (learning.speedTellsPosition && ride.speedSource !== 'position' && bike.speedSensor !== 'gps') {
		found.push({
			code: 'speed-tells-position',
			sentence:
				'The distance agrees with the satellite track as if it came from it: check where the speed was measured.'
		});
	}
	if (learning.distanceTellsMore) {
		found.push({
			code: 'distance-tells-more',
			sentence:
				'The recorded distance fits the cadence better than the recorded speed does: the device smooths or holds its speed. Slips are harder to see in it.'
		});
	}
	return found;
}

function slowPowerSigns({ power, powerHeld, falls, quickFalls }: RideResponse): string {
	const held = (100 * powerHeld).toFixed(0);
	return `correlation of changes ${power.toFixed(2)}, values held ${held} %, falls to nothing within a second ${quickFalls} of ${falls}`;
}
