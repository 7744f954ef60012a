import { answerJson, getLedger, listImports } from '$lib/server';
import type { RequestHandler } from './$types';

/** The newest imports, for a page that follows them; `?limit=` up to 1000. */
export const GET: RequestHandler = ({ url }) =>
	answerJson(() => {
		const limit = Number(url.searchParams.get('limit') ?? 50);
		return { imports: listImports(getLedger(), { limit: Number.isFinite(limit) ? limit : 50 }) };
	});
