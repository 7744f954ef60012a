import { fileAnswersCsv, getLedger } from '$lib/server';
import { filesAsked } from '../filesAsked';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = ({ url }) => {
	const pieces = fileAnswersCsv(getLedger(), filesAsked(url));
	const encoder = new TextEncoder();
	const body = new ReadableStream<Uint8Array>({
		pull(controller) {
			const { done, value } = pieces.next();
			if (done) controller.close();
			else controller.enqueue(encoder.encode(value));
		}
	});
	return new Response(body, {
		headers: {
			'content-type': 'text/csv; charset=utf-8',
			'content-disposition': 'attachment; filename="files-handed-in.csv"',
			'cache-control': 'no-store'
		}
	});
};
