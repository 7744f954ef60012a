import type { FactorRow } from '$lib/reliability/poissonRegression';
import { RATE_UNIT_M } from '../rates/countView';
import type { Counting } from './binnedRates';
import type { EvidenceRide } from './buildEvidence';
import { countedSlips } from './countedSlips';
import { torqueOfBin } from './torqueOfBin';

interface Rider {
	readonly id: number;
	readonly code: string;
}

/** The rider with most observed distance, whom the others are set against, and the others. */
export function riderFactors(rides: readonly EvidenceRide[]): { reference: string | null; others: Rider[] } {
	const observedM = new Map<number, { code: string; metres: number }>();
	for (const { riderId, riderCode, observedM: metres } of rides) {
		if (riderId === null) continue;
		const before = observedM.get(riderId)?.metres ?? 0;
		observedM.set(riderId, { code: riderCode ?? '', metres: before + metres });
	}
	const [most, ...others] = [...observedM].sort(([a, one], [b, other]) => other.metres - one.metres || a - b);
	return {
		reference: most ? most[1].code : null,
		others: others.map(([id, { code }]) => ({ id, code }))
	};
}

/**
 * One row for each torque, gear and ride with observed distance: slips, observed distance in units of 100 km,
 * and [torque in 10 Nm, ratio, pick-ups a km of the ride, age in 100 km, wet, temperature in 10 degrees if asked, one column a rider]. Where torque or gear is not known there
 * is no row: nothing may be filed at a torque of 0. Whether it was wet and nobody said is taken as the share
 * of wet distance; a temperature that was not recorded as the mean of those that were.
 */
export function cellRows(
	rides: readonly EvidenceRide[],
	riders: readonly Rider[],
	{ unit, unreviewed }: Counting,
	withTemperature: boolean
): FactorRow[] {
	const wetShare = shareOfWet(rides);
	const meanC = temperatureRecorded(rides).meanC;
	return rides.flatMap((ride) => {
		const slips = countedSlips(ride.events, unit, unreviewed);
		const age = (ride.ageFromM + ride.totalM / 2) / RATE_UNIT_M;
		const wet = ride.wet === null ? wetShare : Number(ride.wet);
		const warmth = withTemperature ? [(ride.temperatureC ?? meanC) / 10] : [];
		const pickUps = pickUpsPerKm(ride);
		const of = riders.map(({ id }) => Number(id === ride.riderId));
		return ride.cells
			.filter(({ torqueBin, ratio, observedM }) => torqueBin >= 0 && ratio !== null && observedM > 0)
			.map(({ torqueBin, ratio, gear, observedM }) => ({
				count: slips.filter((slip) => slip.torqueBin === torqueBin && slip.gear === gear).length,
				exposure: observedM / RATE_UNIT_M,
				values: [torqueOfBin(torqueBin) / 10, ratio!, pickUps, age, wet, ...warmth, ...of]
			}));
	});
}

/** how often on a km the rider began to press anew, where the recording could show it */
function pickUpsPerKm({ cells, observedM }: EvidenceRide): number {
	const all = cells.reduce((sum, { observedPickUps }) => sum + observedPickUps, 0);
	return observedM > 0 ? all / (observedM / 1000) : 0;
}

/** One row for each hour of a ride: [hour, age in 100 km, wet]. */
export function hourRows(rides: readonly EvidenceRide[], { unit, unreviewed }: Counting): FactorRow[] {
	const wetShare = shareOfWet(rides);
	return rides.flatMap((ride) => {
		const slips = countedSlips(ride.events, unit, unreviewed);
		return ride.hours
			.filter(({ observedM }) => observedM > 0)
			.map(({ hour, observedM }) => ({
				count: slips.filter(({ startS }) => Math.floor(startS / 3600) === hour).length,
				exposure: observedM / RATE_UNIT_M,
				values: [
					hour,
					(ride.ageFromM + ride.totalM / 2) / RATE_UNIT_M,
					ride.wet === null ? wetShare : Number(ride.wet)
				]
			}));
	});
}

function shareOfWet(rides: readonly EvidenceRide[]): number {
	const said = rides.filter(({ wet }) => wet !== null);
	const metres = said.reduce((sum, { observedM }) => sum + observedM, 0);
	return metres > 0 ? said.reduce((sum, ride) => sum + (ride.wet ? ride.observedM : 0), 0) / metres : 0;
}

/** Share of the observed distance whose device recorded a temperature, and its mean over that distance. */
export function temperatureRecorded(rides: readonly EvidenceRide[]): { share: number; meanC: number } {
	const metres = (of: readonly EvidenceRide[]) => of.reduce((sum, { observedM }) => sum + observedM, 0);
	const known = rides.filter(({ temperatureC }) => temperatureC !== null);
	const [all, recorded] = [metres(rides), metres(known)];
	return {
		share: all > 0 ? recorded / all : 0,
		meanC:
			recorded > 0 ? known.reduce((sum, ride) => sum + ride.temperatureC! * ride.observedM, 0) / recorded : 0
	};
}
