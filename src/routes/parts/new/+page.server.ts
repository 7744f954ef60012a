import { redirectTo } from '$lib/address/redirectTo';
import { createPart, getLedger, LedgerRefusal, PART_FINISHES, PART_KINDS, partView } from '$lib/server';
import { fail } from '@sveltejs/kit';
import { typedFields } from '../../typedFields';
import { actorOf } from '../../forms';
import { fieldsOfPart, readPartForm } from '../partFields';
import type { Actions, PageServerLoad } from './$types';

/** `?like=7` begins with the fields of part 7: the next revision or batch of it. */
export const load: PageServerLoad = ({ url }) => {
	const like = Number(url.searchParams.get('like'));
	const part = Number.isSafeInteger(like) && like > 0 ? partView(getLedger(), like) : null;
	return {
		like: part && { id: part.id, mark: part.mark, name: part.name },
		fields: part ? fieldsOfPart(part) : {},
		kinds: PART_KINDS,
		finishes: PART_FINISHES
	};
};

export const actions: Actions = {
	default: async ({ request, locals }) => {
		const form = await request.formData();
		let id: number;
		try {
			id = createPart(getLedger(), actorOf(locals), readPartForm(form));
		} catch (refused) {
			if (!(refused instanceof LedgerRefusal)) throw refused;
			return fail(400, { sentence: refused.sentence, typed: typedFields(form) });
		}
		redirectTo(303, `/parts/${id}`);
	}
};
