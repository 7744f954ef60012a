import {
	buildView,
	getLedger,
	LedgerRefusal,
	partChoices,
	stackPage,
	stockSpacers,
	withdrawnRows,
	withdrawStack
} from '$lib/server';
import { error } from '@sveltejs/kit';
import { actorOf, answered, decimal, neededId, pathId, rowId, text } from '../../../forms';
import { putBackFromForm } from '../../../puttingBack';
import { limitsFromForm } from './limitsForm';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const build = buildView(ledger, pathId(params.id));
	if (!build) error(404, 'This build is not in the ledger.');
	const { ofBuild, others } = partChoices(ledger, build.id);
	return {
		build: { id: build.id, name: build.name, example: build.example },
		page: stackPage(ledger, build.id),
		withdrawn: withdrawnRows(ledger, 'hub_stack', build.id),
		parts: [...ofBuild, ...others]
	};
};

export const actions: Actions = {
	spacer: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => {
			const thicknessMm = decimal(form, 'thicknessMm');
			const count = decimal(form, 'count');
			if (thicknessMm === null || count === null)
				throw new LedgerRefusal('wrong-value', 'Give the thickness and how many there are.');
			const spacer = { thicknessMm, count, note: text(form, 'note') };
			stockSpacers(getLedger(), actorOf(locals), spacer, rowId(form, 'version'));
		});
	},
	limits: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => limitsFromForm(form, actorOf(locals)));
	},
	putBack: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => putBackFromForm(form, actorOf(locals), { buildId: pathId(params.id) }));
	},
	withdraw: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() =>
			withdrawStack(getLedger(), actorOf(locals), neededId(form, 'stack'), text(form, 'reason'))
		);
	}
};
