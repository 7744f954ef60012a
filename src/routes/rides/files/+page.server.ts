import { error } from '@sveltejs/kit';
import { fileAnswers, getLedger } from '$lib/server';
import { filesAsked } from '../filesAsked';
import { importActions } from '../importActions';
import type { PageServerLoad } from './$types';

const PAGE_SIZE = 100;

export const load: PageServerLoad = ({ url }) => {
	const asked = filesAsked(url);
	const page = Math.max(1, Number(url.searchParams.get('page')) || 1);
	const answers = fileAnswers(getLedger(), { ...asked, page, pageSize: PAGE_SIZE });
	if (asked.archiveId !== undefined && answers.archive === null) error(404, 'There is no such archive.');
	return { ...asked, ...answers, page, pageSize: PAGE_SIZE };
};

export const actions = importActions;
