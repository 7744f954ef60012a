import { error } from '@sveltejs/kit';
import { getLedger, listBuilds, wheelView } from '$lib/server';
import { endFromForm, fitFromForm } from '../../fitting';
import { actorOf, answered, pathId } from '../../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const wheel = wheelView(ledger, pathId(params.id));
	if (!wheel) error(404, 'This wheel is not in the ledger.');
	return { wheel, builds: listBuilds(ledger).map(({ id, name }) => ({ id, name })) };
};

export const actions: Actions = {
	fit: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => fitFromForm(form, actorOf(locals), { wheelId: pathId(params.id) }));
	},
	end: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => endFromForm(form, actorOf(locals)));
	}
};
