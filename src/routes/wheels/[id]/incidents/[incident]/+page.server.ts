import {
	closeIncident,
	correctIncident,
	getLedger,
	INCIDENT_KINDS,
	INCIDENT_OUTCOMES,
	INCIDENT_SEVERITIES,
	incidentsOfWheel,
	listAttachments,
	peopleForWheel,
	reopenIncident
} from '$lib/server';
import { error } from '@sveltejs/kit';
import { attachFromForm, withdrawAttachmentFromForm } from '../../../../attaching';
import { actorOf, answered, pathId, rowId, text } from '../../../../forms';
import { incidentOfForm } from '../incidentForm';
import { putBackAttachmentFromForm } from '../../../../puttingBack';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const incidentId = pathId(params.incident);
	const incident = incidentsOfWheel(ledger, pathId(params.id)).find(({ id }) => id === incidentId);
	if (!incident) error(404, 'This incident is not in the ledger.');
	return {
		incident,
		attachments: listAttachments(ledger, 'incident', incident.id),
		kinds: INCIDENT_KINDS,
		severities: INCIDENT_SEVERITIES,
		outcomes: INCIDENT_OUTCOMES,
		people: peopleForWheel(ledger, incident.wheel.id)
	};
};

export const actions: Actions = {
	attach: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'incident', subjectId: pathId(params.incident) } as const;
		return answered(() => attachFromForm(form, actorOf(locals), of));
	},
	putBackAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'incident', subjectId: pathId(params.incident) } as const;
		return answered(() => putBackAttachmentFromForm(form, actorOf(locals), of));
	},
	withdrawAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'incident', subjectId: pathId(params.incident) } as const;
		return answered(() => withdrawAttachmentFromForm(form, actorOf(locals), of));
	},
	correct: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			correctIncident(
				getLedger(),
				actorOf(locals),
				pathId(params.incident),
				incidentOfForm(form),
				rowId(form, 'version') ?? 0
			)
		);
	},
	close: async ({ request, locals, params }) => {
		const form = await request.formData();
		const closing = { outcome: text(form, 'outcome'), reason: text(form, 'reason') };
		return answered(() =>
			closeIncident(
				getLedger(),
				actorOf(locals),
				pathId(params.incident),
				closing,
				rowId(form, 'version') ?? 0
			)
		);
	},
	reopen: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() =>
			reopenIncident(
				getLedger(),
				actorOf(locals),
				pathId(params.incident),
				text(form, 'reason'),
				rowId(form, 'version') ?? 0
			)
		);
	}
};
