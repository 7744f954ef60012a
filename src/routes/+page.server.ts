import { backupState, countHeldBack, exampleState, getLedger, openMarks, versionWaits } from '$lib/server';
import { askFigures } from './askFigures';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
	const ledger = getLedger();
	return {
		...(await askFigures(event, 'programme', null, true)),
		example: exampleState(ledger),
		needAnswers: countHeldBack(ledger),
		ridesWithOpenMarks: openMarks(ledger).size,
		versionWaits: versionWaits(ledger),
		backup: backupState(ledger)
	};
};
