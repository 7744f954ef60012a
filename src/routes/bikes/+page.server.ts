import { redirectTo } from '$lib/address/redirectTo';
import { createBike, getLedger, listBikes } from '$lib/server';
import { actorOf, answered } from '../forms';
import type { Actions, PageServerLoad } from './$types';
import { bikeInput } from './bikeInput';

export const load: PageServerLoad = () => ({ bikes: listBikes(getLedger()) });

export const actions: Actions = {
	default: async ({ request, locals }) => {
		const form = await request.formData();
		const made = await answered(() => ({ id: createBike(getLedger(), actorOf(locals), bikeInput(form)) }));
		return 'id' in made ? redirectTo(303, `/bikes/${made.id}`) : made;
	}
};
