import {
	exampleState,
	falseAlarms,
	getLedger,
	listRides,
	openMarks,
	programmeRows,
	versionWaits
} from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = () => {
	const ledger = getLedger();
	return {
		builds: programmeRows(ledger),
		example: exampleState(ledger),
		needAnswers: listRides(ledger, { page: 1, pageSize: 1, onlyHeldBack: true }).total,
		ridesWithOpenMarks: openMarks(ledger).size,
		falseAlarms: falseAlarms(ledger),
		versionWaits: versionWaits(ledger)
	};
};
