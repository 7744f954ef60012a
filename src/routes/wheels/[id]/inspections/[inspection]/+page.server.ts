import { getLedger, inspectionView, listAttachments, withdrawInspection } from '$lib/server';
import { error } from '@sveltejs/kit';
import { attachFromForm, withdrawAttachmentFromForm } from '../../../../attaching';
import { actorOf, answered, pathId, text } from '../../../../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const inspection = inspectionView(ledger, pathId(params.id), pathId(params.inspection));
	if (!inspection) error(404, 'This inspection is not in the ledger.');
	return { inspection, attachments: listAttachments(ledger, 'inspection', inspection.id) };
};

export const actions: Actions = {
	attach: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'inspection', subjectId: pathId(params.inspection) } as const;
		return answered(() => attachFromForm(form, actorOf(locals), of));
	},
	withdrawAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'inspection', subjectId: pathId(params.inspection) } as const;
		return answered(() => withdrawAttachmentFromForm(form, actorOf(locals), of));
	},
	withdraw: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			withdrawInspection(getLedger(), actorOf(locals), pathId(params.inspection), text(form, 'reason'))
		);
	}
};
