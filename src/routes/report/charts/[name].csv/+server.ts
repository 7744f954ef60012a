import { chartCsv } from '$lib/server';
import { askedChart } from '../askedChart';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = ({ params, url }) => {
	const { chart, told, lines } = askedChart(params.name, url.searchParams);
	return new Response(chartCsv(chart, told, lines), {
		headers: {
			'content-type': 'text/csv; charset=utf-8',
			'content-disposition': `attachment; filename="${chart}.csv"`,
			'cache-control': 'no-store'
		}
	});
};
