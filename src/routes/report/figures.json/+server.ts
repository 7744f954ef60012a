import { error } from '@sveltejs/kit';
import { getLedger, getSettings, listBuilds, reportJson, reportView } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { writtenFigures } from '../../method/sourceFiles';
import { askedReport } from '../askedReport';
import { foundOnObserved } from '../foundOnObserved';
import type { RequestHandler } from './$types';

/** The report as data. Its sentences are written in one locale, so that everybody gets the same bytes. */
export const GET: RequestHandler = ({ url }) => {
	const ledger = getLedger();
	const asked = askedReport(url.searchParams, listBuilds(ledger));
	if (!asked) error(400, 'Name the builds: the one before and the one after.');
	const words = createFormats('en-GB', getSettings(ledger).timeZone);
	const view = reportView(ledger, asked.before.id, asked.afters[0].id, asked.policy, words);
	const data = { ...view, foundOnObserved: foundOnObserved(writtenFigures()) };
	return new Response(reportJson(data), {
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'content-disposition': `attachment; filename="report-${view.before.id}-${view.after.id}.json"`,
			'cache-control': 'no-store'
		}
	});
};
