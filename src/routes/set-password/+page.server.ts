import { redirectTo } from '$lib/address/redirectTo';
import { getLedger, LedgerRefusal, openSession, setPasswordByLink, SHORTEST_PASSWORD } from '$lib/server';
import { answered, text } from '../forms';
import { deviceOf } from '../sign-in/deviceOf';
import { keepSession } from '../sign-in/keepSession';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = () => ({ shortest: SHORTEST_PASSWORD });

export const actions: Actions = {
	default: async ({ request, cookies, locals }) => {
		if (!locals.guarded) redirectTo(303, '/');
		const form = await request.formData();
		const password = String(form.get('password') ?? '');
		const refused = await answered(async () => {
			if (password !== form.get('again'))
				throw new LedgerRefusal('wrong-value', 'The two fields do not say the same.');
			const person = await setPasswordByLink(getLedger(), {
				token: text(form, 'word'),
				password,
				address: locals.client
			});
			keepSession(
				cookies,
				locals,
				openSession(getLedger(), { personId: person.id, linkId: null, device: deviceOf(request) })
			);
		});
		return 'status' in refused ? refused : redirectTo(303, '/');
	}
};
