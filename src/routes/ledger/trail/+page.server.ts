import { getLedger, listTrail } from '$lib/server';
import type { PageServerLoad } from './$types';

const PAGE_SIZE = 50;

export const load: PageServerLoad = ({ url }) => {
	const asked = (name: string) => url.searchParams.get(name)?.trim() || undefined;
	const query = {
		page: Math.max(1, Number(asked('page')) || 1),
		subject: asked('thing'),
		subjectId: asked('number'),
		actorId: Number(asked('by')) || undefined
	};
	return { ...listTrail(getLedger(), { ...query, pageSize: PAGE_SIZE }), ...query, pageSize: PAGE_SIZE };
};
