import { PREFIX } from '$lib/address/prefix';
import { readChannels } from '$lib/charts/readChannels';
import { rideStripData, type StripData } from '$lib/charts/rideStripData';

/** Fetches and prepares the traces of a ride; null when they are not there (yet). */
export async function loadChannels(rideId: number): Promise<StripData | null> {
	const response = await fetch(`${PREFIX}/rides/${rideId}/channels`);
	if (!response.ok) return null;
	return rideStripData(readChannels(await response.arrayBuffer()));
}
