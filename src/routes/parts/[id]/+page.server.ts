import { getLedger, historyOf, partDistances, partView } from '$lib/server';
import { error } from '@sveltejs/kit';
import { attachFromForm, withdrawAttachmentFromForm } from '../../attaching';
import { actorOf, answered, pathId } from '../../forms';
import { putBackAttachmentFromForm } from '../../puttingBack';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const part = partView(getLedger(), pathId(params.id));
	if (!part) error(404, 'This part is not in the ledger.');
	return {
		part,
		distances: partDistances(getLedger()).filter(({ partId }) => partId === part.id),
		history: historyOf(getLedger(), 'part', part.id)
	};
};

export const actions: Actions = {
	attach: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'part', subjectId: pathId(params.id) } as const;
		return answered(() => attachFromForm(form, actorOf(locals), of));
	},
	putBackAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'part', subjectId: pathId(params.id) } as const;
		return answered(() => putBackAttachmentFromForm(form, actorOf(locals), of));
	},
	withdrawAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'part', subjectId: pathId(params.id) } as const;
		return answered(() => withdrawAttachmentFromForm(form, actorOf(locals), of));
	}
};
