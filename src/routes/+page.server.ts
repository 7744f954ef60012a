import {
	backupState,
	exampleState,
	falseAlarms,
	fieldWatches,
	getLedger,
	listRides,
	openMarks,
	programmeRows,
	programmeStories,
	versionWaits
} from '$lib/server';
import { formatsOf } from './formatsOf';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ request }) => {
	const ledger = getLedger();
	return {
		builds: programmeRows(ledger),
		stories: programmeStories(ledger, formatsOf(request)),
		example: exampleState(ledger),
		needAnswers: listRides(ledger, { page: 1, pageSize: 1, onlyHeldBack: true }).total,
		ridesWithOpenMarks: openMarks(ledger).size,
		watches: fieldWatches(ledger, formatsOf(request)),
		falseAlarms: falseAlarms(ledger),
		versionWaits: versionWaits(ledger),
		backup: backupState(ledger)
	};
};
