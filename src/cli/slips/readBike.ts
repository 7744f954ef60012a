import { readFileSync } from 'node:fs';
import * as v from 'valibot';
import type { Bike } from '$lib/drivetrain/bike';

const teeth = v.array(v.pipe(v.number(), v.integer(), v.minValue(8), v.maxValue(70)));
const bikeFile = v.object({
	chainrings: v.optional(teeth),
	cassette: v.optional(teeth),
	circumferenceM: v.optional(v.pipe(v.number(), v.minValue(0.8), v.maxValue(2.6))),
	speedSensor: v.optional(v.picklist(['rear', 'front', 'gps'])),
	powerAt: v.optional(v.picklist(['crank', 'hub']))
});

/**
 * Reads what is known of a bike; every field may be left out.
 *
 * @throws an Error whose message names the file, the field and what is allowed there
 */
export function readBike(path: string): Bike {
	let content: unknown;
	try {
		content = JSON.parse(readFileSync(path, 'utf8'));
	} catch (error) {
		throw new Error(`${path} cannot be read as JSON.`, { cause: error });
	}
	const result = v.safeParse(bikeFile, content);
	if (!result.success) {
		const issue = result.issues[0];
		throw new Error(`${path}: ${v.getDotPath(issue) ?? 'the file'} ${issue.message}`);
	}
	return result.output;
}
