import type { RideKey } from '$lib/server';

/** Reads where in a list of rides an address begins, "1715000000000-12"; null = at its beginning. */
export function rideKey(written: string | null): RideKey | null {
	const read = /^(\d{1,15})-(\d{1,15})$/.exec(written ?? '');
	return read ? { startMs: Number(read[1]), id: Number(read[2]) } : null;
}

/** The same as an address carries it. */
export function writtenKey({ startMs, id }: RideKey): string {
	return `${startMs}-${id}`;
}
