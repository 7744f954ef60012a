import {
	getLedger,
	INCIDENT_KINDS,
	INCIDENT_SEVERITIES,
	incidentsOfWheel,
	peopleForWheel,
	reportIncident,
	wheelView
} from '$lib/server';
import { error, fail } from '@sveltejs/kit';
import { actorOf, pathId } from '../../../forms';
import { refusalOf } from '../../../refusalOf';
import { incidentOfForm, typedIncident } from './incidentForm';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const wheel = wheelView(ledger, pathId(params.id));
	if (!wheel) error(404, 'This wheel is not in the ledger.');
	return {
		wheel: { id: wheel.id, name: wheel.name, example: wheel.example },
		incidents: incidentsOfWheel(ledger, wheel.id),
		kinds: INCIDENT_KINDS,
		severities: INCIDENT_SEVERITIES,
		people: peopleForWheel(ledger, wheel.id)
	};
};

export const actions: Actions = {
	report: async ({ request, locals, params }) => {
		const form = await request.formData();
		const sentence = refusalOf(() => {
			reportIncident(getLedger(), actorOf(locals), pathId(params.id), incidentOfForm(form));
		});
		return sentence === null ? { done: true } : fail(400, { sentence, typed: typedIncident(form) });
	}
};
