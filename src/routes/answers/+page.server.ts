import { answerRides, answersView, getLedger, undoAnswers } from '$lib/server';
import { actorOf, answered, neededId } from '../forms';
import { givenAnswers, questionOf } from './givenAnswers';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url }) => answersView(getLedger(), url.searchParams.get('question'));

export const actions: Actions = {
	answer: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => {
			const given = givenAnswers(form);
			const batch = answerRides(getLedger(), actorOf(locals), questionOf(form), given);
			return { batch, given: given.length };
		});
	},
	undo: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => undoAnswers(getLedger(), actorOf(locals), neededId(form, 'batch')));
	}
};
