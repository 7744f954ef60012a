import { redirect } from '@sveltejs/kit';
import { getLedger, signIn } from '$lib/server';
import { answered, text } from '../forms';
import { deviceOf } from './deviceOf';
import { keepSession } from './keepSession';
import { whereTo } from './whereTo';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals, url }) => {
	if (!locals.guarded || locals.actor) redirect(303, whereTo(url.searchParams.get('to')));
	return {};
};

export const actions: Actions = {
	default: async ({ request, cookies, locals, url }) => {
		if (!locals.guarded) redirect(303, '/');
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
		return 'status' in refused ? refused : redirect(303, whereTo(url.searchParams.get('to')));
	}
};
