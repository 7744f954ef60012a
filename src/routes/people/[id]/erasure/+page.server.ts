import { eraseRider, erasureOf, getLedger, LedgerRefusal } from '$lib/server';
import { error } from '@sveltejs/kit';
import { actorOf, answered, pathId, text } from '../../../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	try {
		const { files, leftovers, ...erasure } = erasureOf(getLedger(), pathId(params.id));
		const { archives, uploads, named } = leftovers;
		return {
			erasure: { ...erasure, files: files.length, archives: archives.length, uploads: uploads.length, named }
		};
	} catch (refused) {
		if (refused instanceof LedgerRefusal) error(404, refused.sentence);
		throw refused;
	}
};

export const actions: Actions = {
	default: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => ({
			erased: eraseRider(getLedger(), actorOf(locals), {
				personId: pathId(params.id),
				reason: text(form, 'reason')
			})
		}));
	}
};
