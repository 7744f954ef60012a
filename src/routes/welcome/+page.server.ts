import { redirectTo } from '$lib/address/redirectTo';
import { getLedger, installExample, ledgerIsEmpty, startEmpty } from '$lib/server';
import { actorOf, answered, text } from '../forms';
import { chooseName } from './chooseName';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals, url }) => {
	const ledger = getLedger();
	const empty = ledgerIsEmpty(ledger);
	const other = url.searchParams.has('other') && !locals.guarded;
	if (locals.actor && !empty && !other) redirectTo(303, '/');
	return { named: locals.actor !== null && !other, empty };
};

export const actions: Actions = {
	name: async ({ request, cookies, locals }) => {
		const name = text(await request.formData(), 'name');
		const refused = await answered(() => chooseName(cookies, locals, name));
		return 'status' in refused ? refused : redirectTo(303, '/welcome');
	},
	example: async ({ locals }) => {
		const refused = await answered(() => installExample(getLedger(), actorOf(locals)));
		return refused && 'status' in refused ? refused : redirectTo(303, '/');
	},
	empty: async ({ locals }) => {
		const refused = await answered(() => startEmpty(getLedger(), actorOf(locals)));
		return refused && 'status' in refused ? refused : redirectTo(303, '/wheels');
	}
};
