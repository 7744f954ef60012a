import { exampleState, getLedger, listRides, programmeRows } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = () => {
	const ledger = getLedger();
	return {
		builds: programmeRows(ledger),
		example: exampleState(ledger),
		needAnswers: listRides(ledger, { page: 1, pageSize: 1, onlyNeeds: true }).total
	};
};
