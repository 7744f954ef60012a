import { getLedger, getSettings } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { preferredLocale } from '$lib/ui/preferredLocale';
import { askedChart } from '../askedChart';
import { chartSvg } from '../chartSvg';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = ({ params, url, request }) => {
	const { chart, told, lines } = askedChart(params.name, url.searchParams);
	const formats = createFormats(
		preferredLocale(request.headers.get('accept-language')),
		getSettings(getLedger()).timeZone
	);
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
