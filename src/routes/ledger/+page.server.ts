import { backupState, getLedger, lastVerify, ledgerSchema } from '$lib/server';
import { actorOf } from '../forms';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	const ledger = getLedger();
	return {
		schema: ledgerSchema(ledger),
		mayExportNames: actorOf(locals).role === 'owner',
		backup: backupState(ledger),
		verify: lastVerify(ledger.folder)
	};
};
