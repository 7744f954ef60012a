import { chartCsv } from '$lib/server';
import { formatsOf } from '../../../formatsOf';
import { askedChart } from '../askedChart';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = async ({ params, url, request }) => {
	const { chart, told, lines } = await askedChart(params.name, url.searchParams, formatsOf(request));
	return new Response(chartCsv(chart, told, lines), {
		headers: {
			'content-type': 'text/csv; charset=utf-8',
			'content-disposition': `attachment; filename="${chart}.csv"`,
			'cache-control': 'no-store'
		}
	});
};
