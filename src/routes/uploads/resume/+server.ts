import { answerJson, getLedger, readJsonObject, resumeUpload } from '$lib/server';
import { actorOf } from '../../forms';
import type { RequestHandler } from './$types';

const LIMIT_BYTES = 8 * 1024;

/** What has come of a large file before: { name, size } -> { id, pieceBytes, pieces: [SHA-256] } or {}. */
export const POST: RequestHandler = ({ request, locals }) =>
	answerJson(async () => {
		const actor = actorOf(locals);
		const { name, size } = await readJsonObject(request, LIMIT_BYTES);
		return resumeUpload(getLedger(), actor, { name: String(name ?? ''), size: Number(size) });
	});
