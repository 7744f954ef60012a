import { redirectTo } from '$lib/address/redirectTo';
import { error, fail } from '@sveltejs/kit';
import {
	buildContents,
	buildHardware,
	changeBuild,
	getLedger,
	getSettings,
	LedgerRefusal,
	listParts,
	listPeople
} from '$lib/server';
import { actorOf, neededId, pathId, text } from '../../../forms';
import { typedFields } from '../../../typedFields';
import { fieldsOf, readBuildForm } from './buildFields';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const build = buildHardware(ledger, pathId(params.id));
	const contents = buildContents(ledger, pathId(params.id));
	if (!build || !contents) error(404, 'This build is not in the ledger.');
	const { id, name, rowVersion, lock, state } = build;
	return {
		build: { id, name, rowVersion, lock, state },
		fields: fieldsOf(contents, getSettings(ledger).timeZone),
		lines: contents.bill.length,
		joints: contents.torques.length,
		parts: listParts(ledger).map((part) => ({
			id: part.id,
			kind: part.kind,
			label: `${part.name}: ${part.mark}`
		})),
		people: listPeople(ledger).map((person) => ({ id: person.id, code: person.code }))
	};
};

export const actions: Actions = {
	default: async ({ request, locals, params }) => {
		const form = await request.formData();
		const ledger = getLedger();
		const buildId = pathId(params.id);
		const before = buildContents(ledger, buildId);
		if (!before) error(404, 'This build is not in the ledger.');
		try {
			const input = readBuildForm(form, before, getSettings(ledger).timeZone);
			changeBuild(ledger, actorOf(locals), buildId, neededId(form, 'rowVersion'), input);
		} catch (refused) {
			if (!(refused instanceof LedgerRefusal)) throw refused;
			const stands = buildHardware(ledger, buildId)?.rowVersion;
			const stale = String(stands) !== text(form, 'rowVersion');
			return fail(400, { sentence: refused.sentence, stale, typed: typedFields(form) });
		}
		redirectTo(303, `/builds/${buildId}`);
	}
};
