import type { FileAnswersQuery } from '$lib/server';

/** Which files a list or a table of them is asked for, by its address. */
export function filesAsked(url: URL): FileAnswersQuery {
	const archive = url.searchParams.get('archive') ?? '';
	return {
		...(/^\d{1,15}$/.test(archive) ? { archiveId: Number(archive) } : {}),
		onlyNotRead: url.searchParams.get('all') !== '1'
	};
}
