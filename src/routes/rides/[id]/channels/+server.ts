import { channelBytes, getLedger, ownRateOf, rideChannels } from '$lib/server';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { error } from '@sveltejs/kit';
import { pathId } from '../../../forms';
import { windowBytes, windowOf } from './windowBytes';
import type { RequestHandler } from './$types';

/**
 * The traces of a ride at one value a second, as `channelBytes` lays them out; with from, to (seconds) and pixels
 * what a logger saw of that stretch at its own rate, as much as fits the pixels.
 */
export const GET: RequestHandler = ({ params, url }) => {
	const [ledger, rideId] = [getLedger(), pathId(params.id)];
	if (url.searchParams.has('from')) return answer(windowBytes(ledger, rideId, windowOf(url.searchParams)));
	const traces = rideChannels(ledger, rideId);
	return answer(
		traces &&
			channelBytes(traces, {
				secondsPerValue: 1,
				states: DRIVE_STATES,
				ownRate: ownRateOf(ledger, rideId)
			})
	);
};

function answer(bytes: Uint8Array<ArrayBuffer> | null): Response {
	if (!bytes) error(404, 'The lines of this ride are not there yet.');
	return new Response(bytes, {
		headers: { 'content-type': 'application/octet-stream', 'cache-control': 'no-store' }
	});
}
