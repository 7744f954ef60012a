import { AGE_CLOCKS, buildsToChoose, getLedger } from '$lib/server';
import { askFigures } from '../askFigures';
import { writtenFigures } from '../method/sourceFiles';
import { askedReport } from './askedReport';
import { foundOnObserved } from './foundOnObserved';
import { reportQuery } from './reportQuery';
import { reportWords } from './reportWords';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ url, request }) => {
	const ledger = getLedger();
	const builds = buildsToChoose(ledger).map(({ id, name }) => ({ id, name }));
	const asked = askedReport(url.searchParams, builds);
	if (!asked)
		return { builds, clocks: AGE_CLOCKS, computing: null, view: null, query: '', found: [], words: [] };
	const { before, policy } = asked;
	const [after] = asked.afters;
	// a report goes to others: its figures hold every ride
	const { figures, computing } = await askFigures(
		{ request, url },
		'report',
		{ beforeId: before.id, afterId: after.id, policy },
		false
	);
	return {
		builds,
		clocks: AGE_CLOCKS,
		computing,
		view: figures,
		query: figures ? reportQuery(before, [after], policy) : '',
		found: figures ? foundOnObserved(writtenFigures()) : [],
		words: figures ? reportWords(figures.release.criteria !== null) : []
	};
};
