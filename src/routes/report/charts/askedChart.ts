import { error } from '@sveltejs/kit';
import { buildsToChoose, CHART_NAMES, getLedger, showFigures, type ChartName } from '$lib/server';
import type { Formats } from '$lib/ui/formats';
import { askedReport } from '../askedReport';

/**
 * What a drawing or table of a chart is made of.
 *
 * @param words of whoever asks
 * @throws 404 for a chart or build that does not exist, 400 for an address without builds or of a build against itself
 */
export async function askedChart(name: string, asked: URLSearchParams, words: Formats) {
	const chart = CHART_NAMES.find((known): known is ChartName => known === name);
	if (!chart) error(404, 'There is no such chart.');
	const report = askedReport(asked, buildsToChoose(getLedger()), true);
	if (!report) error(400, 'Name the builds: the one before and those after.');
	const buildIds = [report.before, ...report.afters].map(({ id }) => id);
	const { figures } = await showFigures('charts', { buildIds, policy: report.policy }, words, {
		mayBeOlder: false,
		wait: true
	});
	if (!figures) error(503, 'The chart is being computed; ask again.');
	return { chart, ...figures };
}
