import { redirectTo } from '$lib/address/redirectTo';
import { getLedger, signIn } from '$lib/server';
import { answered, text } from '../forms';
import { deviceOf } from './deviceOf';
import { keepSession } from './keepSession';
import { whereTo } from './whereTo';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals, url }) => {
	if (!locals.guarded || locals.actor) redirectTo(303, whereTo(url.searchParams.get('to')));
	return {};
};

export const actions: Actions = {
	default: async ({ request, cookies, locals, url }) => {
		if (!locals.guarded) redirectTo(303, '/');
		const form = await request.formData();
		const refused = await answered(async () => {
			const opened = await signIn(getLedger(), {
				name: text(form, 'name'),
				password: String(form.get('password') ?? ''),
				address: locals.client,
				device: deviceOf(request)
			});
			keepSession(cookies, locals, opened);
		});
		return 'status' in refused ? refused : redirectTo(303, whereTo(url.searchParams.get('to')));
	}
};
