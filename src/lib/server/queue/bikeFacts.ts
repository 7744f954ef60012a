import { createHash } from 'node:crypto';
import type { Bike } from '$lib/drivetrain/bike';

/** lengths are stated to a tenth of a millimetre at the finest */
const CIRCUMFERENCE_DIGITS = 4;

/**
 * What is known of a bike in the one form in which it is compared and stored: names in order, teeth in
 * order, nothing that is not known.
 */
export function statedFacts(bike: Bike): Bike {
	return {
		...(bike.cassette?.length ? { cassette: [...bike.cassette].sort((a, b) => a - b) } : {}),
		...(bike.chainrings?.length ? { chainrings: [...bike.chainrings].sort((a, b) => a - b) } : {}),
		...(bike.circumferenceM === undefined
			? {}
			: { circumferenceM: Number(bike.circumferenceM.toFixed(CIRCUMFERENCE_DIGITS)) }),
		...(bike.powerAt === undefined ? {} : { powerAt: bike.powerAt }),
		...(bike.speedSensor === undefined ? {} : { speedSensor: bike.speedSensor })
	};
}

/**
 * The part of a result's key that stands for the bike: a hash over canonical JSON of its facts.
 *
 * @returns 32 hexadecimal digits; '' when nothing is known of the bike
 */
export function bikeFacts(bike: Bike): string {
	const canonical = JSON.stringify(statedFacts(bike));
	return canonical === '{}' ? '' : createHash('sha256').update(canonical).digest('hex').slice(0, 32);
}
