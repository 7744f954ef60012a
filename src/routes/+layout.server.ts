import { getLedger, getSettings } from '$lib/server';
import { preferredLocale } from '$lib/ui/preferredLocale';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = ({ locals, request }) => ({
	...getSettings(getLedger()),
	locale: preferredLocale(request.headers.get('accept-language')),
	personName: locals.actor?.name ?? null
});
