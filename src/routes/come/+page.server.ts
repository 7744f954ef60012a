import { redirectTo } from '$lib/address/redirectTo';
import { comeInByLink, getLedger } from '$lib/server';
import { answered, text } from '../forms';
import { deviceOf } from '../sign-in/deviceOf';
import { keepSession } from '../sign-in/keepSession';
import type { Actions } from './$types';

export const actions: Actions = {
	default: async ({ request, cookies, locals }) => {
		if (!locals.guarded) redirectTo(303, '/');
		const form = await request.formData();
		const refused = await answered(() => {
			const opened = comeInByLink(getLedger(), {
				token: text(form, 'word'),
				address: locals.client,
				device: deviceOf(request)
			});
			keepSession(cookies, locals, opened);
		});
		return 'status' in refused ? refused : redirectTo(303, '/own');
	}
};
