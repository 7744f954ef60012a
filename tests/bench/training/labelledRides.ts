import { existsSync, readFileSync } from 'node:fs';
import { decodeRide } from '../../../src/lib/ride/decodeRide';
import type { Bike } from '../../../src/lib/drivetrain/bike';
import type { Ride } from '../../../src/lib/ride/ride';

/** Folder beside the project that holds rides whose slips are known; benchmarks say so where it is missing. */
export const LABELLED = new URL('../../../../shared/labelled-rides/', import.meta.url).pathname;

export interface TrueEvent {
	readonly t0: number;
	readonly t1: number;
	readonly kind: string;
	readonly crankDeg: number;
	readonly hubTorqueNm?: number;
}

export interface LabelledRide {
	readonly name: string;
	/** rides of one group share a rider or a device: they are left out together */
	readonly group: string;
	readonly ride: Ride;
	readonly bike: Bike;
	readonly km: number;
	readonly events: readonly TrueEvent[];
}

/** Recordings that seem to come from the same device and rider by their sensors and rhythm. */
const REAL_GROUPS: Record<string, string> = { r02: 'r01', r03: 'r01', r04: 'r01', r05: 'r01' };

/** Reads one folder of labelled rides; empty where it is missing. */
export async function labelledRides(folder: string, root = LABELLED): Promise<LabelledRide[]> {
	const base = `${root}${folder}/`;
	if (!existsSync(`${base}truth.json`)) return [];
	const truth = JSON.parse(readFileSync(`${base}truth.json`, 'utf8'));
	const rides: LabelledRide[] = [];
	for (const name of Object.keys(truth)) {
		const entry = truth[name];
		try {
			const ride = await decodeRide(readFileSync(base + entry.file), entry.file);
			const bike: Bike = entry.chainrings
				? {
						chainrings: entry.chainrings,
						cassette: entry.cassette,
						circumferenceM: entry.circumferenceSetting,
						speedSensor: entry.speedSource
					}
				: {};
			const own = name.slice(0, 3);
			const group = `${folder}/${REAL_GROUPS[own] ?? own}`;
			rides.push({ name, group, ride, bike, km: entry.km, events: entry.events });
		} catch (error) {
			console.log(`${name}: refused (${error instanceof Error ? error.message : error})`);
		}
	}
	return rides;
}
