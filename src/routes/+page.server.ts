import { backupState, exampleState, getLedger, listRides, openMarks, versionWaits } from '$lib/server';
import { askFigures } from './askFigures';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
	const ledger = getLedger();
	return {
		...(await askFigures(event, 'programme', null, true)),
		example: exampleState(ledger),
		needAnswers: listRides(ledger, { page: 1, pageSize: 1, onlyHeldBack: true }).total,
		ridesWithOpenMarks: openMarks(ledger).size,
		versionWaits: versionWaits(ledger),
		backup: backupState(ledger)
	};
};
