import type { Bike } from '$lib/drivetrain/bike';
import type { Ride } from '$lib/ride/ride';

/**
 * Whether the recorded speed is that of the driven wheel, as far as bike and file tell. Speed of the front
 * wheel or from satellite positions cannot tell a tyre that spins from a freehub that slips, so nothing of
 * such a ride counts as observed (its events are still listed). Where neither bike nor file says where the
 * sensor sits, it is taken to be at the driven wheel.
 *
 * @returns false for a stated front-wheel or satellite source; what is stated of the bike wins over the file
 */
export function speedFollowsHub(ride: Pick<Ride, 'speedSource'>, bike: Pick<Bike, 'speedSensor'>): boolean {
	if (bike.speedSensor) return bike.speedSensor === 'rear';
	return ride.speedSource !== 'position';
}
