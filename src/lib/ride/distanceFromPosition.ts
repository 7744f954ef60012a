/** mean radius of the earth, metres (IUGG) */
const EARTH_M = 6_371_009;

/**
 * Distance over ground along recorded positions (haversine on a sphere).
 * @param latitudeDeg degrees, NaN = missing
 * @param longitudeDeg degrees, NaN = missing
 * @returns metres from the first position, NaN where there is none; horizontal: climbs are left out
 * @example one degree of longitude on the equator is 111,195 m
 */
export function distanceFromPosition(latitudeDeg: Float64Array, longitudeDeg: Float64Array): Float64Array {
	const distanceM = new Float64Array(latitudeDeg.length).fill(NaN);
	const rad = Math.PI / 180;
	let last = -1;
	let sum = 0;
	for (let i = 0; i < latitudeDeg.length; i++) {
		if (Number.isNaN(latitudeDeg[i]) || Number.isNaN(longitudeDeg[i])) continue;
		if (last >= 0) {
			const north = Math.sin(((latitudeDeg[i] - latitudeDeg[last]) * rad) / 2);
			const east = Math.sin(((longitudeDeg[i] - longitudeDeg[last]) * rad) / 2);
			const h = north ** 2 + Math.cos(latitudeDeg[i] * rad) * Math.cos(latitudeDeg[last] * rad) * east ** 2;
			sum += 2 * EARTH_M * Math.asin(Math.min(1, Math.sqrt(h)));
		}
		distanceM[i] = sum;
		last = i;
	}
	return distanceM;
}
