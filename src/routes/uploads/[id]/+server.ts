import {
	answerJson,
	appendToUpload,
	bodyPieces,
	cancelUpload,
	getLedger,
	LedgerRefusal,
	uploadOffset
} from '$lib/server';
import { actorOf } from '../../forms';
import type { RequestHandler } from './$types';

/** one piece; a broken connection costs no more than what was under way */
const LIMIT_BYTES = 8 * 2 ** 20;

/** How much has come: { offset, size }. */
export const GET: RequestHandler = ({ params }) => answerJson(() => uploadOffset(getLedger(), params.id));

/** Appends the raw body at the offset named in the header Upload-Offset -> { offset }. */
export const PATCH: RequestHandler = ({ params, request, locals }) =>
	answerJson(() => {
		actorOf(locals);
		const header = request.headers.get('upload-offset') ?? '';
		if (!/^\d{1,15}$/.test(header))
			throw new LedgerRefusal('wrong-value', 'The header Upload-Offset must say where the piece begins.');
		return appendToUpload(getLedger(), params.id, Number(header), bodyPieces(request, LIMIT_BYTES));
	});

/** Its own sender gives it up. */
export const DELETE: RequestHandler = ({ params, locals }) =>
	answerJson(() => cancelUpload(getLedger(), actorOf(locals), params.id));
