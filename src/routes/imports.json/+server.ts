import { answerJson, getLedger, importOverview, listImports } from '$lib/server';
import type { RequestHandler } from './$types';

/** The newest imports (`?limit=` up to 1000); `?overview` for a page that follows them: what wants somebody. */
export const GET: RequestHandler = ({ url }) =>
	answerJson(() => {
		if (url.searchParams.has('overview')) return importOverview(getLedger());
		const limit = Number(url.searchParams.get('limit') ?? 50);
		return { imports: listImports(getLedger(), { limit: Number.isFinite(limit) ? limit : 50 }) };
	});
