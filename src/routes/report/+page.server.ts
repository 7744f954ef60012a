import { AGE_CLOCKS, getLedger, getSettings, listBuilds, reportView } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { preferredLocale } from '$lib/ui/preferredLocale';
import { writtenFigures } from '../method/sourceFiles';
import { askedReport } from './askedReport';
import { foundOnObserved } from './foundOnObserved';
import { reportQuery } from './reportQuery';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url, request }) => {
	const ledger = getLedger();
	const builds = listBuilds(ledger).map(({ id, name }) => ({ id, name }));
	const asked = askedReport(url.searchParams, builds);
	if (!asked) return { builds, clocks: AGE_CLOCKS, view: null, query: '', found: [] };
	const { before, policy } = asked;
	const [after] = asked.afters;
	const locale = preferredLocale(request.headers.get('accept-language'));
	const words = createFormats(locale, getSettings(ledger).timeZone);
	return {
		builds,
		clocks: AGE_CLOCKS,
		view: reportView(ledger, before.id, after.id, policy, words),
		query: reportQuery(before, [after], policy),
		found: foundOnObserved(writtenFigures())
	};
};
