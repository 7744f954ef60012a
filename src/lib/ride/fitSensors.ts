import type { FitMessage } from './fitMessages';
import { MAX_HANDFUL } from './limits';
import type { Sensor, SensorKind } from './ride';

/** the FIT profile's device types, by the name the parser gives or the number it leaves */
const KINDS: Readonly<Record<string, SensorKind>> = {
	bike_power: 'power',
	bike_speed: 'speed',
	bike_cadence: 'cadence',
	bike_speed_cadence: 'speed and cadence',
	shifting: 'shifting',
	'11': 'power',
	'34': 'shifting',
	'121': 'speed and cadence',
	'122': 'cadence',
	'123': 'speed'
};
const OTHERS: readonly string[] = [
	'heart_rate',
	'fitness_equipment',
	'bike_trainer',
	'light_electric_vehicle'
];

/**
 * The sensors that were paired, from the device messages. Only what kind they are is kept: a serial
 * number would tell whose they are.
 * @param devices device-information messages
 * @returns one entry a kind and description, in file order
 */
export function fitSensors(devices: readonly FitMessage[]): Sensor[] {
	const sensors = new Map<string, Sensor>();
	for (const device of devices) {
		if (sensors.size === MAX_HANDFUL) break;
		if (device.device_index === 'creator') continue;
		const type = String(device.device_type ?? '');
		const kind = KINDS[type] ?? (OTHERS.includes(type) ? 'other' : null);
		if (!kind) continue;
		const named = cleaned(device.descriptor) || cleaned(device.product_name);
		const description = named || (kind === 'other' ? type.replaceAll('_', ' ') : kind);
		sensors.set(`${kind} ${description}`, { kind, description });
	}
	return [...sensors.values()];
}

/** at most 40 printable characters, without runs of digits that could be a serial number */
function cleaned(text: unknown): string {
	if (typeof text !== 'string') return '';
	return text
		.slice(0, 200)
		.replace(/[^\p{L}\p{N} ._/+()-]/gu, ' ')
		.replace(/[\p{N}A-F]*\p{N}[\p{N}A-F]{3,}/giu, ' ')
		.replace(/\s+/g, ' ')
		.trim()
		.slice(0, 40);
}
