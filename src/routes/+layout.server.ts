import { getLedger, getSettings } from '$lib/server';
import { preferredLocale } from '$lib/ui/preferredLocale';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = ({ locals, request }) => {
	const settings = getSettings(getLedger());
	const outside = locals.guarded && !locals.actor;
	return {
		...settings,
		// whoever is not in yet does not read whose ledger this is
		workshopName: outside ? '' : settings.workshopName,
		locale: preferredLocale(request.headers.get('accept-language')),
		personName: locals.actor?.name ?? null,
		role: locals.actor?.role ?? null,
		guarded: locals.guarded,
		byLink: locals.byLink
	};
};
