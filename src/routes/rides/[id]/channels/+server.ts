import { channelBytes, getLedger, rideChannels } from '$lib/server';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { error } from '@sveltejs/kit';
import { pathId } from '../../../forms';
import type { RequestHandler } from './$types';

/** The traces of a ride at one value a second, as `channelBytes` lays them out. */
export const GET: RequestHandler = ({ params }) => {
	const traces = rideChannels(getLedger(), pathId(params.id));
	if (!traces) error(404, 'The lines of this ride are not there yet.');
	return new Response(channelBytes(traces, { secondsPerValue: 1, states: DRIVE_STATES }), {
		headers: { 'content-type': 'application/octet-stream', 'cache-control': 'no-store' }
	});
};
