import { getLedger, inspectionsOfWheel, wearOfWheel, wheelView } from '$lib/server';
import { error } from '@sveltejs/kit';
import { pathId } from '../../../forms';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const wheel = wheelView(ledger, pathId(params.id));
	if (!wheel) error(404, 'This wheel is not in the ledger.');
	return {
		wheel: { id: wheel.id, name: wheel.name, example: wheel.example },
		inspections: inspectionsOfWheel(ledger, wheel.id),
		wear: wearOfWheel(ledger, wheel.id)
	};
};
