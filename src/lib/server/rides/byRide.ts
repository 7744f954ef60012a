/** A row that belongs to a ride. */
export interface OfRide {
	readonly rideId: number;
}

/** Rows by their ride, in the order in which they came. */
export function byRide<Row extends OfRide>(rows: readonly Row[]): Map<number, Row[]> {
	const map = new Map<number, Row[]>();
	for (const row of rows) {
		const ofRide = map.get(row.rideId);
		if (ofRide) ofRide.push(row);
		else map.set(row.rideId, [row]);
	}
	return map;
}
