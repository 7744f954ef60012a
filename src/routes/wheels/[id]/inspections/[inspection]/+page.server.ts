import { getLedger, inspectionView, listAttachments, withdrawInspection, withdrawnRows } from '$lib/server';
import { error } from '@sveltejs/kit';
import { attachFromForm, withdrawAttachmentFromForm } from '../../../../attaching';
import { actorOf, answered, pathId, text } from '../../../../forms';
import { putBackAttachmentFromForm, putBackFromForm } from '../../../../puttingBack';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const inspection = inspectionView(ledger, pathId(params.id), pathId(params.inspection));
	if (!inspection) error(404, 'This inspection is not in the ledger.');
	return {
		inspection,
		withdrawn: withdrawnRows(ledger, 'inspection', inspection.wheel.id).filter(
			({ id }) => id === inspection.id
		),
		attachments: listAttachments(ledger, 'inspection', inspection.id)
	};
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
	putBackAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'inspection', subjectId: pathId(params.inspection) } as const;
		return answered(() => putBackAttachmentFromForm(form, actorOf(locals), of));
	},
	putBack: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => putBackFromForm(form, actorOf(locals), { wheelId: pathId(params.id) }));
	},
	withdraw: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			withdrawInspection(getLedger(), actorOf(locals), pathId(params.inspection), text(form, 'reason'))
		);
	}
};
