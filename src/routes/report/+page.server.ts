import { AGE_CLOCKS, buildsToChoose, comparisonToCome, getLedger, reportView } from '$lib/server';
import { asksForNow, computingNow } from '../computingNow';
import { formatsOf } from '../formatsOf';
import { writtenFigures } from '../method/sourceFiles';
import { askedReport } from './askedReport';
import { foundOnObserved } from './foundOnObserved';
import { reportQuery } from './reportQuery';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url, request }) => {
	const ledger = getLedger();
	const builds = buildsToChoose(ledger).map(({ id, name }) => ({ id, name }));
	const asked = askedReport(url.searchParams, builds);
	if (!asked) return { builds, clocks: AGE_CLOCKS, computing: null, view: null, query: '', found: [] };
	const { before, policy } = asked;
	const [after] = asked.afters;
	const toCome = asksForNow(url) ? null : comparisonToCome(ledger, [before, after], policy);
	if (toCome)
		return {
			builds,
			clocks: AGE_CLOCKS,
			computing: { ...toCome, address: computingNow(url) },
			view: null,
			query: '',
			found: []
		};
	return {
		builds,
		clocks: AGE_CLOCKS,
		computing: null,
		view: reportView(ledger, before.id, after.id, policy, formatsOf(request)),
		query: reportQuery(before, [after], policy),
		found: foundOnObserved(writtenFigures())
	};
};
