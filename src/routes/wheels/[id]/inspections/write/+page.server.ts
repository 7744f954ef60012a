import { redirectTo } from '$lib/address/redirectTo';
import {
	correctInspection,
	getLedger,
	getSettings,
	INSPECTION_KINDS,
	inspectionsOfWheel,
	inspectionView,
	LedgerRefusal,
	peopleForWheel,
	recordInspection,
	wheelView
} from '$lib/server';
import { zonedInstant } from '$lib/ui/zonedInstant';
import { error, fail } from '@sveltejs/kit';
import { actorOf, pathId, rowId, text } from '../../../../forms';
import { refusalOf } from '../../../../refusalOf';
import { inspectionOfForm, typedInspection } from './inspectionForm';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params, url, locals }) => {
	const ledger = getLedger();
	const wheel = wheelView(ledger, pathId(params.id));
	if (!wheel) error(404, 'This wheel is not in the ledger.');
	const wanted = url.searchParams.get('inspection');
	const corrected = wanted === null ? null : inspectionView(ledger, wheel.id, pathId(wanted));
	if (wanted !== null && !corrected) error(404, 'This inspection is not in the ledger.');
	return {
		wheel: { id: wheel.id, name: wheel.name, example: wheel.example },
		corrected,
		// the same places each time make a series
		like: corrected ?? inspectionsOfWheel(ledger, wheel.id)[0] ?? null,
		kinds: INSPECTION_KINDS,
		people: peopleForWheel(ledger, wheel.id),
		actorId: locals.actor?.personId ?? null
	};
};

export const actions: Actions = {
	default: async ({ request, locals, params }) => {
		const form = await request.formData();
		const wheelId = pathId(params.id);
		let inspectionId = rowId(form, 'inspection');
		const seenVersion = rowId(form, 'version');
		const sentence = refusalOf(() => {
			const actor = actorOf(locals);
			const at = zonedInstant(text(form, 'at'), getSettings(getLedger()).timeZone);
			if (!at) throw new LedgerRefusal('wrong-value', 'Give the day and the time of day.');
			const inspection = inspectionOfForm(form, at);
			if (inspectionId === null) inspectionId = recordInspection(getLedger(), actor, wheelId, inspection);
			else correctInspection(getLedger(), actor, inspectionId, inspection, seenVersion ?? 0);
		});
		if (sentence === null) redirectTo(303, `/wheels/${wheelId}/inspections/${inspectionId}`);
		// what was typed stands in the form again, with the version that was seen: not passed off as the newest
		return fail(400, {
			sentence,
			typed: { ...typedInspection(form), seenVersion }
		});
	}
};
