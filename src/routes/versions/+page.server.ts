import {
	countComputingAgain,
	getLedger,
	makeVersionCurrent,
	removeVersion,
	unmatchedVerdicts,
	versionDifferences,
	versionState
} from '$lib/server';
import { actorOf, answered, neededId } from '../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url }) => {
	const ledger = getLedger();
	const state = versionState(ledger);
	const asked = Number(url.searchParams.get('with'));
	const other = state.waits && !asked ? state.program : asked;
	const known = state.kept.some(({ version }) => version === other && version !== state.current);
	return {
		state,
		computingAgain: countComputingAgain(ledger),
		unmatched: unmatchedVerdicts(ledger),
		differences: known ? versionDifferences(ledger, other) : null
	};
};

export const actions: Actions = {
	switch: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() =>
			makeVersionCurrent(
				getLedger(),
				actorOf(locals),
				neededId(form, 'version'),
				neededId(form, 'seenCurrent')
			)
		);
	},
	remove: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => removeVersion(getLedger(), actorOf(locals), neededId(form, 'version')));
	}
};
