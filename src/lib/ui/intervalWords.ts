import type { Formats } from './formats';

/** What the limits of a build's rate rest on; the server's view fits. */
export interface IntervalFigures {
	readonly pooled: {
		readonly upperPerHundredKm: number | null;
		readonly decidedBy: 'single' | 'bursts' | 'scatter';
		/** variance of the rides' counts / their mean, as used */
		readonly dispersion: number;
		readonly assumesSingleEvents: boolean;
		/** the build whose spread was taken */
		readonly borrowedFrom: string | null;
	};
	readonly wheels: readonly unknown[];
}

/** with fewer wheels than this nothing is known of how far hubs differ */
const WHEELS_FOR_SPREAD = 5;

/** What the limits of a rate rest on, and for how many wheels they speak. */
export function intervalWords({ pooled, wheels }: IntervalFigures, formats: Formats): string {
	if (pooled.upperPerHundredKm === null) return '';
	const count = wheels.length;
	const forWheels = count === 1 ? 'For this one wheel' : `For these ${formats.number(count)} wheels`;
	const spread =
		count < WHEELS_FOR_SPREAD
			? '; how far hubs of this build differ from each other is not known from so few'
			: '';
	return `${forWheels}${spread}. ${clustering(pooled, formats)}`;
}

function clustering(
	{ assumesSingleEvents, borrowedFrom, decidedBy, dispersion }: IntervalFigures['pooled'],
	formats: Formats
): string {
	if (borrowedFrom !== null)
		return `Too few slips to see whether they cluster: the spread of the rides of ${borrowedFrom} is taken (${formats.figure(dispersion)} times that of single slips).`;
	if (assumesSingleEvents) return 'The limits assume that slips do not cluster: there are too few to see.';
	if (decidedBy === 'single') return 'The rides show no more scatter than slips that come singly.';
	const what = decidedBy === 'bursts' ? 'slips that come in bursts within rides' : 'good and bad rides';
	return `The limits allow for ${what}: ${formats.figure(dispersion)} times the spread of single slips.`;
}
