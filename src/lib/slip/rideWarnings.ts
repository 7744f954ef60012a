import type { Bike } from '$lib/drivetrain/bike';
import type { NamedGears } from '$lib/drivetrain/nameGears';
import type { Ride, RideWarning } from '$lib/ride/ride';
import type { RideContext } from './rideContext';
import { isPowerSlow } from './rideResponse';
import { speedFollowsHub } from './speedFollowsHub';

/** What the reader of this ride's results must know. */
export function rideWarnings(ride: Ride, context: RideContext, bike: Bike, named: NamedGears): RideWarning[] {
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
			`correlation of changes ${context.response.power.toFixed(2)}, values held ${(100 * context.response.powerHeld).toFixed(0)} %`
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
	} else if (bike.circumferenceM && Math.abs(named.circumferenceM / bike.circumferenceM - 1) > 0.01) {
		warn(
			'circumference',
			`The ride fits a wheel circumference of ${named.circumferenceM.toFixed(3)} m better than the stated ${bike.circumferenceM.toFixed(3)} m.`
		);
	}
	return warnings;
}
