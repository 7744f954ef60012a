import { redirectTo } from '$lib/address/redirectTo';
import { columnQuestion, getLedger, LedgerRefusal, nameColumns, pokeWebRunner } from '$lib/server';
import { error } from '@sveltejs/kit';
import { actorOf, answered, pathId } from '../../../forms';
import { mappingOf } from '../mappingOf';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	try {
		return { question: columnQuestion(getLedger(), pathId(params.id)) };
	} catch (refused) {
		if (!(refused instanceof LedgerRefusal)) throw refused;
		error(404, refused.sentence);
	}
};

export const actions: Actions = {
	default: async ({ request, params, locals }) => {
		const form = await request.formData();
		const outcome = await answered(() => {
			const files = nameColumns(getLedger(), actorOf(locals), pathId(params.id), mappingOf(form));
			return { files };
		});
		if (!('files' in outcome)) return outcome;
		pokeWebRunner();
		redirectTo(303, '/rides');
	}
};
