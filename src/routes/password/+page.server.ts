import { error } from '@sveltejs/kit';
import {
	changePassword,
	endSession,
	getLedger,
	LedgerRefusal,
	sessionsOf,
	SHORTEST_PASSWORD
} from '$lib/server';
import { actorOf, answered, neededId } from '../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	const actor = actorOf(locals);
	if (!locals.guarded || locals.byLink) error(404, 'There is no such page.');
	return {
		shortest: SHORTEST_PASSWORD,
		sessions: sessionsOf(getLedger(), actor.personId).map((session) => ({
			...session,
			here: session.id === locals.sessionId
		}))
	};
};

export const actions: Actions = {
	change: async ({ request, locals }) => {
		const form = await request.formData();
		const after = String(form.get('password') ?? '');
		return answered(async () => {
			if (locals.sessionId === null || locals.byLink)
				throw new LedgerRefusal('not-allowed', 'There is no password to change here.');
			if (after !== form.get('again'))
				throw new LedgerRefusal('wrong-value', 'The two fields do not say the same.');
			await changePassword(getLedger(), actorOf(locals), {
				before: String(form.get('before') ?? ''),
				after,
				address: locals.client,
				sessionId: locals.sessionId
			});
			return { changed: true as const };
		});
	},
	end: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => {
			const id = neededId(form, 'session');
			const mine = sessionsOf(getLedger(), actorOf(locals).personId).some((session) => session.id === id);
			if (!mine || locals.byLink) throw new LedgerRefusal('not-found', 'This browser is not in any more.');
			endSession(getLedger(), id);
		});
	}
};
