import { POWER_PLACES, SPEED_SENSORS, type BikeInput } from '$lib/server';
import { decimal, text } from '../forms';
import { teeth } from '../teeth';

/** What the fields of a bike say; an empty one says nothing. */
export function bikeInput(form: FormData): BikeInput {
	const motor = text(form, 'motor');
	return {
		name: text(form, 'name'),
		chainrings: teeth(form, 'chainrings'),
		cassette: teeth(form, 'cassette'),
		circumferenceM: decimal(form, 'circumferenceM'),
		speedSensor: SPEED_SENSORS.find((one) => one === text(form, 'speedSensor')) ?? null,
		powerFrom: POWER_PLACES.find((one) => one === text(form, 'powerFrom')) ?? null,
		motor: motor === '' ? null : motor === 'yes'
	};
}
