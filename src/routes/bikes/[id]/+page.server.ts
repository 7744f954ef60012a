import { error } from '@sveltejs/kit';
import { bikeView, getLedger, historyOf, takeGearCorrection, updateBike } from '$lib/server';
import { actorOf, answered, neededId, pathId, rowId, text } from '../../forms';
import { bikeInput } from '../bikeInput';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const bike = bikeView(getLedger(), pathId(params.id));
	if (!bike) error(404, 'This bike is not in the ledger.');
	return { bike, trail: historyOf(getLedger(), 'bike', bike.id) };
};

export const actions: Actions = {
	facts: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			updateBike(getLedger(), actorOf(locals), pathId(params.id), bikeInput(form), neededId(form, 'version'))
		);
	},
	take: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			takeGearCorrection(
				getLedger(),
				actorOf(locals),
				pathId(params.id),
				rowId(form, 'wheel'),
				text(form, 'change')
			)
		);
	}
};
