import { formatsOf } from '../../../formatsOf';
import { askedChart } from '../askedChart';
import { chartSvg } from '../chartSvg';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = async ({ params, url, request }) => {
	const formats = formatsOf(request);
	const { chart, told, lines } = await askedChart(params.name, url.searchParams, formats);
	return new Response(chartSvg(chart, told, lines, formats), {
		headers: {
			'content-type': 'image/svg+xml; charset=utf-8',
			'content-disposition': `attachment; filename="${chart}.svg"`,
			// opened by itself it may run and fetch nothing
			'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'",
			'cache-control': 'no-store'
		}
	});
};
