import { getLedger, giveUpArchive, removeBrokenUpload, retryImport, type Actor } from '$lib/server';
import { actorOf, answered, neededId } from '../forms';
import type { RequestEvent } from '@sveltejs/kit';

type Ledger = ReturnType<typeof getLedger>;

/** Does one thing about a file that was handed in. */
function about(action: (ledger: Ledger, actor: Actor, importId: number) => void) {
	return async ({ request, locals }: RequestEvent) => {
		const form = await request.formData();
		return answered(() => action(getLedger(), actorOf(locals), neededId(form, 'import')));
	};
}

/** What can be done about files that were handed in, wherever they are listed. */
export const importActions = {
	retry: about(retryImport),
	giveUp: about(giveUpArchive),
	remove: about(removeBrokenUpload)
};
