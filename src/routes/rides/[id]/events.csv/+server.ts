import { eventsCsv, getLedger, rideView } from '$lib/server';
import { error } from '@sveltejs/kit';
import { pathId } from '../../../forms';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = ({ params }) => {
	const ride = rideView(getLedger(), pathId(params.id));
	if (!ride) error(404, 'There is no such ride.');
	return new Response(eventsCsv(ride), {
		headers: {
			'content-type': 'text/csv; charset=utf-8',
			'content-disposition': `attachment; filename="ride-${ride.id}-events.csv"`,
			'cache-control': 'no-store'
		}
	});
};
