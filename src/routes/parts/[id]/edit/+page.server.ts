import { redirectTo } from '$lib/address/redirectTo';
import { changePart, getLedger, LedgerRefusal, PART_FINISHES, PART_KINDS, partView } from '$lib/server';
import { error, fail } from '@sveltejs/kit';
import { actorOf, neededId, pathId, text } from '../../../forms';
import { typedFields } from '../../../typedFields';
import { fieldsOfPart, readPartForm } from '../../partFields';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const part = partView(getLedger(), pathId(params.id));
	if (!part) error(404, 'This part is not in the ledger.');
	return {
		part: { id: part.id, name: part.name, mark: part.mark, rowVersion: part.rowVersion, lock: part.lock },
		fields: fieldsOfPart(part),
		kinds: PART_KINDS,
		finishes: PART_FINISHES
	};
};

export const actions: Actions = {
	default: async ({ request, locals, params }) => {
		const form = await request.formData();
		const partId = pathId(params.id);
		try {
			changePart(getLedger(), actorOf(locals), partId, neededId(form, 'rowVersion'), readPartForm(form));
		} catch (refused) {
			if (!(refused instanceof LedgerRefusal)) throw refused;
			const stale = String(partView(getLedger(), partId)?.rowVersion) !== text(form, 'rowVersion');
			return fail(400, { sentence: refused.sentence, stale, typed: typedFields(form) });
		}
		redirectTo(303, `/parts/${partId}`);
	}
};
