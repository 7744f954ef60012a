import { keepStrongest } from './keepStrongest';
import { addRide, emptyScore } from './scoreEvents';
import type { GatheredRide } from './gather';

/** False alarms per 1000 km on rides without slip, at each of which recall is taken. */
export const FALSE_RATES = [3, 6, 9, 12, 15, 20];
const LEAST_DEG = 60;
const FROM_LOG_ODDS = -4;

type Judged = Pick<GatheredRide, 'events' | 'km' | 'startS' | 'sizeDeg' | 'overrunDeg'>;

/**
 * One figure to set two detectors side by side: the share of slips of 60 degrees and more that is found, mean over a
 * row of false-alarm rates. At one limit the figure hangs on the two or three strongest false alarms: two seeds of the
 * same training stood at 60 and 72 % there, and at 70 and 75 % by this one.
 *
 * @param rides rides of one kind; those without slips give the false alarms
 * @returns share from 0 to 1; NaN without slips or without a ride that has none
 */
export function meanRecall(rides: readonly { part: Judged; logOdds: readonly number[] }[]): number {
	const falseOdds: number[] = [];
	const slipOdds: number[] = [];
	let healthyKm = 0;
	for (const { part, logOdds } of rides) {
		const found = keepStrongest(part, logOdds, FROM_LOG_ODDS);
		const { wrong, foundBy } = addRide(emptyScore(), part.events, part.km, found, [], 0, 0);
		const slips = part.events.filter((event) => event.kind !== 'chain skip');
		for (const slip of slips) {
			if (slip.crankDeg >= LEAST_DEG) slipOdds.push(foundBy.get(slip)?.strength ?? -Infinity);
		}
		if (slips.length > 0) continue;
		healthyKm += part.km;
		falseOdds.push(...wrong.map(({ strength }) => strength));
	}
	if (slipOdds.length === 0 || healthyKm === 0) return NaN;
	falseOdds.sort((a, b) => b - a);
	const shares = FALSE_RATES.map((perThousandKm) => {
		// the first false alarm that is one too many has to stay below
		const above = falseOdds[Math.floor((perThousandKm * healthyKm) / 1000)] ?? FROM_LOG_ODDS;
		return slipOdds.filter((odds) => odds > above).length / slipOdds.length;
	});
	return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}
