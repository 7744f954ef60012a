import type { FitRecords } from './fitRecords';
import type { Columns } from './recordedRide';

/**
 * The records of a FIT file as columns in SI units.
 * @param records numbers of the records in file order
 * @returns one column a channel, NaN = missing
 */
export function fitColumns({ atMs, numbers }: FitRecords): Columns {
	const length = atMs.length;
	return {
		speedMps: firstOf(length, numbers.speed, numbers.enhanced_speed),
		distanceM: firstOf(length, numbers.distance),
		cadenceRpm: firstOf(
			length,
			withFraction(numbers.cadence, numbers.fractional_cadence),
			numbers.cadence256
		),
		powerW: firstOf(length, numbers.power),
		altitudeM: firstOf(length, numbers.altitude, numbers.enhanced_altitude),
		temperatureC: firstOf(length, numbers.temperature),
		latitudeDeg: firstOf(length, numbers.position_lat),
		longitudeDeg: firstOf(length, numbers.position_long)
	};
}

/** newer devices write the enhanced field alone, some write both: the second fills what the first leaves open */
function firstOf(length: number, plain?: Float64Array, other?: Float64Array): Float64Array {
	if (!plain) return other ?? new Float64Array(length).fill(NaN);
	if (other) for (let i = 0; i < length; i++) if (Number.isNaN(plain[i])) plain[i] = other[i];
	return plain;
}

/** whole turns a minute, with the fraction where the device writes one */
function withFraction(whole?: Float64Array, fraction?: Float64Array): Float64Array | undefined {
	if (!whole || !fraction) return whole;
	return whole.map((turns, i) => (Number.isNaN(fraction[i]) ? turns : turns + fraction[i]));
}
