import {
	answerReview,
	disputes,
	getLedger,
	oneProbeIn,
	openReviewItem,
	REJECT_REASONS,
	reviewFigures,
	reviewLast,
	reviewProgress,
	reviewScene,
	undoReview
} from '$lib/server';
import { actorOf, answered, text } from '../forms';
import { givenReview } from './givenReview';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	const ledger = getLedger();
	const actor = actorOf(locals);
	const item = openReviewItem(ledger, actor);
	return {
		scene: item && reviewScene(ledger, item),
		progress: reviewProgress(ledger, actor.personId),
		oneProbeIn: oneProbeIn(ledger),
		figures: reviewFigures(ledger),
		disputes: disputes(ledger),
		rejectReasons: [...REJECT_REASONS]
	};
};

export const actions: Actions = {
	answer: async ({ request, locals }) => {
		const form = await request.formData();
		const token = text(form, 'token');
		const actor = actorOf(locals);
		return answered(() => {
			answerReview(getLedger(), actor, token, givenReview(form));
			return { last: reviewLast(getLedger(), actor, token) };
		});
	},
	undo: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => undoReview(getLedger(), actorOf(locals), text(form, 'token')));
	}
};
