import { error } from '@sveltejs/kit';
import { buildsToChoose, getLedger, getSettings, reportJson, showFigures } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { writtenFigures } from '../../method/sourceFiles';
import { askedReport } from '../askedReport';
import { foundOnObserved } from '../foundOnObserved';
import type { RequestHandler } from './$types';

/** The report as data. Its sentences are written in one locale, so that everybody gets the same bytes. */
export const GET: RequestHandler = async ({ url }) => {
	const ledger = getLedger();
	const asked = askedReport(url.searchParams, buildsToChoose(ledger));
	if (!asked) error(400, 'Name the builds: the one before and the one after.');
	const words = createFormats('en-GB', getSettings(ledger).timeZone);
	const { figures: view } = await showFigures(
		'report',
		{ beforeId: asked.before.id, afterId: asked.afters[0].id, policy: asked.policy },
		words,
		{ mayBeOlder: false, wait: true }
	);
	if (!view) error(503, 'The report is being computed; ask again.');
	const data = { ...view, foundOnObserved: foundOnObserved(writtenFigures()) };
	return new Response(reportJson(data), {
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'content-disposition': `attachment; filename="report-${view.before.id}-${view.after.id}.json"`,
			'cache-control': 'no-store'
		}
	});
};
