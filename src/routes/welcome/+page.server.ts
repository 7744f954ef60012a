import { redirect } from '@sveltejs/kit';
import { choosePerson, getLedger, installExample, ledgerIsEmpty, startEmpty } from '$lib/server';
import { actorOf, answered, text } from '../forms';
import { rememberPerson } from './rememberPerson';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	const ledger = getLedger();
	const empty = ledgerIsEmpty(ledger);
	if (locals.actor && !empty) redirect(303, '/');
	return { named: locals.actor !== null, empty };
};

export const actions: Actions = {
	name: async ({ request, cookies }) => {
		const name = text(await request.formData(), 'name');
		return answered(() => rememberPerson(cookies, choosePerson(getLedger(), name)));
	},
	example: async ({ locals }) => {
		const refused = await answered(() => installExample(getLedger(), actorOf(locals)));
		return refused && 'status' in refused ? refused : redirect(303, '/');
	},
	empty: async ({ locals }) => {
		const refused = await answered(() => startEmpty(getLedger(), actorOf(locals)));
		return refused && 'status' in refused ? refused : redirect(303, '/wheels');
	}
};
