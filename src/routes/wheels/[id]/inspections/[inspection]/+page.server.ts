import { getLedger, inspectionView, withdrawInspection } from '$lib/server';
import { error } from '@sveltejs/kit';
import { actorOf, answered, pathId, text } from '../../../../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const inspection = inspectionView(getLedger(), pathId(params.id), pathId(params.inspection));
	if (!inspection) error(404, 'This inspection is not in the ledger.');
	return { inspection };
};

export const actions: Actions = {
	withdraw: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			withdrawInspection(getLedger(), actorOf(locals), pathId(params.inspection), text(form, 'reason'))
		);
	}
};
