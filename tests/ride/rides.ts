import { decodeRide } from '$lib/ride/decodeRide';
import { RideRefused, type Ride } from '$lib/ride/ride';
import { fitRide, type RideShape } from './fitBytes';

export const decode = (bytes: Uint8Array, name = 'ride.fit') => decodeRide(bytes, name);
export const ride = (shape: RideShape = {}) => decode(fitRide(shape).close());
export const codes = (read: Ride) => read.warnings.map(({ code }) => code);
export const values = (read: Ride, name: keyof Ride['channels']) =>
	Array.from(read.channels[name]?.value ?? []);

/** the refusal with which a file is not taken; fails when it is taken */
export async function refusalOf(bytes: Uint8Array, name = 'ride.fit'): Promise<RideRefused> {
	try {
		await decode(bytes, name);
	} catch (error) {
		if (error instanceof RideRefused) return error;
		throw error;
	}
	throw new Error('the file was taken');
}
