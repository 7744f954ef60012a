import { error } from '@sveltejs/kit';
import { buildView, falseAlarms, getLedger, listWheels } from '$lib/server';
import { correctFromForm, endFromForm, fitFromForm, withdrawFromForm } from '../../fitting';
import { actorOf, answered, pathId } from '../../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const build = buildView(ledger, pathId(params.id));
	if (!build) error(404, 'This build is not in the ledger.');
	return {
		build,
		wheels: listWheels(ledger).map(({ id, name }) => ({ id, name })),
		falseAlarms: falseAlarms(ledger)
	};
};

export const actions: Actions = {
	fit: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => fitFromForm(form, actorOf(locals), { buildId: pathId(params.id) }));
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
