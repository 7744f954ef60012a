import { error } from '@sveltejs/kit';
import { getLedger, listBuilds, setKnownGood, wheelView } from '$lib/server';
import { correctFromForm, endFromForm, fitFromForm, withdrawFromForm } from '../../fitting';
import { actorOf, answered, pathId, text } from '../../forms';
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
	good: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			setKnownGood(getLedger(), actorOf(locals), pathId(params.id), text(form, 'good') === 'yes')
		);
	},
	end: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => endFromForm(form, actorOf(locals)));
	},
	correct: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => correctFromForm(form, actorOf(locals)));
	},
	withdraw: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => withdrawFromForm(form, actorOf(locals)));
	}
};
