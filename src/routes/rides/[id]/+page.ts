import type { PageLoad } from './$types';

/** The panel of an event is fetched with the first event that is opened: most looks at a ride open none. */
export const load: PageLoad = async ({ data, url }) => ({
	...data,
	EventPanel: url.searchParams.has('event') ? (await import('./EventPanel.svelte')).default : null
});
