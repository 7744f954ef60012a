import { redirectTo } from '$lib/address/redirectTo';
import { error } from '@sveltejs/kit';
import { getLedger, nameColumnsAnew, pokeWebRunner, rideColumns, ridesReadAlike } from '$lib/server';
import { actorOf, answered, pathId, text } from '../../../forms';
import { mappingOf } from '../../columns/mappingOf';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const columns = rideColumns(ledger, pathId(params.id));
	if (!columns) error(404, 'This ride was not read by columns that somebody named.');
	const { rideId, fileName, head, mapping } = columns;
	return { rideId, fileName, head, mapping, alike: ridesReadAlike(ledger, columns).length };
};

export const actions: Actions = {
	default: async ({ request, params, locals }) => {
		const form = await request.formData();
		const rideId = pathId(params.id);
		const outcome = await answered(() => {
			const alike = text(form, 'alike') === 'yes';
			return { rides: nameColumnsAnew(getLedger(), actorOf(locals), rideId, mappingOf(form), alike) };
		});
		if (!('rides' in outcome)) return outcome;
		pokeWebRunner();
		redirectTo(303, `/rides/${rideId}`);
	}
};
