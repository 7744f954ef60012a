import { channelBytes, MOST_PIXELS, ownRateWindow, type Ledger } from '$lib/server';
import { error } from '@sveltejs/kit';

interface AskedWindow {
	readonly fromS: number;
	readonly toS: number;
	readonly pixels: number;
}

/** The stretch that an address asks for; 400 where it is none. */
export function windowOf(query: URLSearchParams): AskedWindow {
	const [fromS, toS, pixels] = ['from', 'to', 'pixels'].map((name) => {
		const value = query.get(name) ?? '';
		return /^-?\d{1,9}(\.\d{1,6})?$/.test(value) ? Number(value) : NaN;
	});
	if (!(fromS >= 0 && toS > fromS && pixels >= 1 && pixels <= MOST_PIXELS))
		error(400, `Ask with from and to in seconds and pixels from 1 to ${MOST_PIXELS}.`);
	return { fromS, toS, pixels };
}

/**
 * The lines of a stretch at their own rate, laid out as the traces are: for each name its lowest values, then its
 * highest; null where the ride has none.
 */
export function windowBytes(
	ledger: Ledger,
	rideId: number,
	{ fromS, toS, pixels }: AskedWindow
): Uint8Array<ArrayBuffer> | null {
	const shown = ownRateWindow(ledger, rideId, [fromS, toS], pixels);
	if (!shown) return null;
	const channels = shown.lines.flatMap(({ name, low, high }) => [
		{ name: `${name}.low`, values: low as Float32Array<ArrayBuffer> },
		{ name: `${name}.high`, values: high as Float32Array<ArrayBuffer> }
	]);
	const { sampleS, size, fromS: startS } = shown;
	return channelBytes({ length: shown.count, channels }, { sampleS, size, fromS: startS });
}
