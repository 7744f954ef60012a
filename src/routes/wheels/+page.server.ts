import { redirectTo } from '$lib/address/redirectTo';
import { buildList, createBuild, createWheel, getLedger, listWheels } from '$lib/server';
import { actorOf, answered, decimal, text } from '../forms';
import type { Actions, PageServerLoad } from './$types';
import { wheelInput } from './wheelInput';

export const load: PageServerLoad = () => {
	const ledger = getLedger();
	return { wheels: listWheels(ledger), anyBuild: buildList(ledger).length > 0 };
};

export const actions: Actions = {
	wheel: async ({ request, locals }) => {
		const form = await request.formData();
		const made = await answered(() => ({
			id: createWheel(getLedger(), actorOf(locals), wheelInput(form))
		}));
		return 'id' in made ? redirectTo(303, `/wheels/${made.id}`) : made;
	},
	build: async ({ request, locals }) => {
		const form = await request.formData();
		const made = await answered(() => ({
			id: createBuild(getLedger(), actorOf(locals), {
				name: text(form, 'name'),
				description: text(form, 'description'),
				stepHubDeg: decimal(form, 'stepHubDeg')
			})
		}));
		return 'id' in made ? redirectTo(303, `/builds/${made.id}`) : made;
	}
};
