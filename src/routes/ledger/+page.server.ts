import { getLedger, ledgerSchema } from '$lib/server';
import { actorOf } from '../forms';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => ({
	schema: ledgerSchema(getLedger()),
	mayExportNames: actorOf(locals).role === 'owner'
});
