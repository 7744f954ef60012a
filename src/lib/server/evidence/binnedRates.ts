import { HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';
import { rateView } from '../rates/countView';
import type { RateView } from '../views';
import type { EvidenceRide } from './buildEvidence';
import { countedSlips, type CountedUnit } from './countedSlips';
import { overBins } from './overBins';

/** A rate over one bin of distance, torque or time. */
export interface BinnedRate {
	/** lower edge; null = not known */
	readonly from: number | null;
	/** upper edge; null = open upwards, or not known */
	readonly to: number | null;
	readonly rate: RateView;
}

/** How slips are counted while some are not reviewed. */
export interface Counting {
	readonly unit: CountedUnit;
	readonly unreviewed: 'slip' | 'none';
}

/**
 * Slip frequency over the kilometres of a build, all its wheels together.
 *
 * @param binM width of a bin, metres
 * @returns bins from 0 to the last observed kilometre, those without observed distance among them
 */
export function ratesOverAge(rides: readonly EvidenceRide[], binM: number, counting: Counting): BinnedRate[] {
	const observedM: number[] = [];
	const slips: number[] = [];
	for (const ride of rides) {
		for (const { fromM, toM } of ride.observed)
			overBins(ride.ageFromM + fromM, ride.ageFromM + toM, binM, (bin, metres) => {
				observedM[bin] = (observedM[bin] ?? 0) + metres;
			});
		for (const { atM } of countedSlips(ride.events, counting.unit, counting.unreviewed)) {
			const bin = Math.floor((ride.ageFromM + atM) / binM);
			slips[bin] = (slips[bin] ?? 0) + 1;
		}
	}
	return Array.from({ length: Math.max(observedM.length, slips.length) }, (_, bin) => ({
		from: bin * binM,
		to: (bin + 1) * binM,
		rate: rateView(slips[bin] ?? 0, observedM[bin] ?? 0)
	}));
}

/** Slip frequency by mean hub torque, Nm, in the fixed bins of exposure; last comes torque not known. */
export function ratesOverTorque(rides: readonly EvidenceRide[], counting: Counting): BinnedRate[] {
	const bins = HUB_TORQUE_EDGES_NM.length;
	const place = (torqueBin: number) => (torqueBin < 0 ? bins : torqueBin);
	const slips = Array<number>(bins + 1).fill(0);
	const observedM = Array<number>(bins + 1).fill(0);
	for (const ride of rides) {
		for (const cell of ride.cells) observedM[place(cell.torqueBin)] += cell.observedM;
		for (const { torqueBin } of countedSlips(ride.events, counting.unit, counting.unreviewed))
			slips[place(torqueBin)]++;
	}
	return slips.map((count, bin) => ({
		from: bin < bins ? HUB_TORQUE_EDGES_NM[bin] : null,
		to: HUB_TORQUE_EDGES_NM[bin + 1] ?? null,
		rate: rateView(count, observedM[bin])
	}));
}

/** Slip frequency by the hour of the ride, 0 = the first, by the clock. */
export function ratesOverHours(rides: readonly EvidenceRide[], counting: Counting): BinnedRate[] {
	const slips: number[] = [];
	const observedM: number[] = [];
	for (const ride of rides) {
		for (const hour of ride.hours) observedM[hour.hour] = (observedM[hour.hour] ?? 0) + hour.observedM;
		for (const { startS } of countedSlips(ride.events, counting.unit, counting.unreviewed)) {
			const hour = Math.floor(startS / 3600);
			slips[hour] = (slips[hour] ?? 0) + 1;
		}
	}
	return Array.from({ length: Math.max(observedM.length, slips.length) }, (_, hour) => ({
		from: hour,
		to: hour + 1,
		rate: rateView(slips[hour] ?? 0, observedM[hour] ?? 0)
	}));
}
