import { error, fail } from '@sveltejs/kit';
import {
	buildsToChoose,
	DECISIONS,
	getLedger,
	LedgerRefusal,
	plannerView,
	recordToSign,
	setReleaseCriteria,
	signDecision,
	type Decision
} from '$lib/server';
import { askFigures } from '../../../askFigures';
import { actorOf, answered, neededId, pathId, text } from '../../../forms';
import { formatsOf } from '../../../formatsOf';
import { typedFields } from '../../../typedFields';
import { criteriaFromForm } from './criteriaForm';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ params, request, url, locals }) => {
	const ledger = getLedger();
	const id = pathId(params.id);
	if (!buildsToChoose(ledger).some((build) => build.id === id))
		error(404, 'This build is not in the ledger.');
	// this page is signed: its figures hold every ride
	const { figures, computing } = await askFigures({ request, url }, 'release', { buildId: id }, false);
	return {
		computing,
		shown: figures && {
			...figures,
			planner: plannerView(
				{
					ratePerThousandKm: numberIn(url.searchParams, 'rate'),
					confidencePercent: numberIn(url.searchParams, 'confidence'),
					slipsAllowed: numberIn(url.searchParams, 'allowed'),
					wheels: numberIn(url.searchParams, 'wheels')
				},
				figures.view.pace
			),
			isOwner: locals.actor?.role === 'owner'
		}
	};
};

/** A number of the address; null when it is none. */
function numberIn(asked: URLSearchParams, name: string): number | null {
	const value = asked.get(name) ?? '';
	return value === '' ? null : Number(value.replace(',', '.'));
}

export const actions: Actions = {
	criteria: async ({ params, request, locals }) => {
		const form = await request.formData();
		try {
			setReleaseCriteria(getLedger(), actorOf(locals), criteriaFromForm(form, pathId(params.id)));
		} catch (refused) {
			if (!(refused instanceof LedgerRefusal)) throw refused;
			return fail(400, { sentence: refused.sentence, typed: typedFields(form) });
		}
	},
	sign: async ({ params, request, locals }) => {
		const form = await request.formData();
		return answered(() => {
			const ledger = getLedger();
			const buildId = pathId(params.id);
			const decision = text(form, 'decision');
			if (!DECISIONS.includes(decision as Decision))
				throw new LedgerRefusal('wrong-value', 'Choose a decision.');
			const toSign = recordToSign(ledger, buildId, formatsOf(request));
			if (!toSign) throw new LedgerRefusal('wrong-value', 'Set the criteria first.');
			signDecision(
				ledger,
				actorOf(locals),
				{
					buildId,
					decision: decision as Decision,
					reason: text(form, 'reason'),
					seenCriteriaId: neededId(form, 'criteria'),
					seenRecordSha256: text(form, 'record')
				},
				toSign.record,
				toSign.allHold
			);
		});
	}
};
