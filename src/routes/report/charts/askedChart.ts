import { error } from '@sveltejs/kit';
import {
	buildAgainstBuild,
	CHART_NAMES,
	comparison,
	getLedger,
	listBuilds,
	type ChartName
} from '$lib/server';
import { askedReport } from '../askedReport';

/**
 * What a drawing or table of a chart is made of.
 *
 * @throws 404 for a chart or build that does not exist, 400 for an address without builds
 */
export function askedChart(name: string, asked: URLSearchParams) {
	const chart = CHART_NAMES.find((known): known is ChartName => known === name);
	if (!chart) error(404, 'There is no such chart.');
	const ledger = getLedger();
	const report = askedReport(asked, listBuilds(ledger));
	if (!report) error(400, 'Name the builds: the one before and those after.');
	const builds = [report.before, ...report.afters];
	return {
		chart,
		told: buildAgainstBuild(ledger, builds, report.policy),
		lines: comparison(
			ledger,
			builds.map(({ id }) => id)
		).lines
	};
}
