import type { PageLoad } from './$types';

/** What most looks at a ride do not show is fetched by those that do: the panel of an event with the first one opened. */
export const load: PageLoad = async ({ data, url }) => {
	const { ride, said, stages, columns } = data;
	const { looksWrong, recordedAt, startedAt } = stages.clock;
	const [panel, felt, split, clock, read] = await Promise.all([
		url.searchParams.has('event') ? import('./EventPanel.svelte') : null,
		ride.felt.length > 0 ? import('./FeltSlips.svelte') : null,
		said.changes.length > 0 ? import('./RideSplit.svelte') : null,
		looksWrong || recordedAt !== startedAt ? import('./RideClock.svelte') : null,
		columns ? import('./ReadColumns.svelte') : null
	]);
	return {
		...data,
		EventPanel: panel?.default,
		FeltSlips: felt?.default,
		RideSplit: split?.default,
		RideClock: clock?.default,
		ReadColumns: read?.default
	};
};
