import { dev } from '$app/environment';
import { error } from '@sveltejs/kit';
import { tokenValues } from '$lib/ui/colour/tokenValues';
import css from '$lib/ui/tokens.css?raw';
import type { PageServerLoad } from './$types';

/** For whoever works on the look: the built server answers as if there were no such page. */
export const load: PageServerLoad = () => {
	if (!dev) error(404);
	const { light, dark } = tokenValues(css);
	return { schemes: [light, dark].map((tokens, index) => ({ name: index ? 'dark' : 'light', tokens })) };
};
