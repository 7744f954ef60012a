import { redirectTo } from '$lib/address/redirectTo';
import { buildList, createBuild, getLedger } from '$lib/server';
import { actorOf, answered, decimal, text } from '../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = () => ({ builds: buildList(getLedger()) });

export const actions: Actions = {
	default: async ({ request, locals }) => {
		const form = await request.formData();
		const made = await answered(() => ({
			id: createBuild(getLedger(), actorOf(locals), {
				name: text(form, 'name'),
				description: text(form, 'description'),
				stepHubDeg: decimal(form, 'stepHubDeg')
			})
		}));
		return 'id' in made ? redirectTo(303, `/builds/${made.id}/edit`) : made;
	}
};
