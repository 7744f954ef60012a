import { getLedger, inspectionsOfWheel, wearOfWheel, wheelView, withdrawnRows } from '$lib/server';
import { error } from '@sveltejs/kit';
import { actorOf, answered, pathId } from '../../../forms';
import { putBackFromForm } from '../../../puttingBack';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const wheel = wheelView(ledger, pathId(params.id));
	if (!wheel) error(404, 'This wheel is not in the ledger.');
	return {
		wheel: { id: wheel.id, name: wheel.name, example: wheel.example },
		inspections: inspectionsOfWheel(ledger, wheel.id),
		withdrawn: withdrawnRows(ledger, 'inspection', wheel.id),
		wear: wearOfWheel(ledger, wheel.id)
	};
};

export const actions: Actions = {
	putBack: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => putBackFromForm(form, actorOf(locals), { wheelId: pathId(params.id) }));
	}
};
