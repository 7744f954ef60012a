import { answerJson, getLedger, knownFiles, readJsonObject } from '$lib/server';
import { actorOf } from '../../forms';
import type { RequestHandler } from './$types';

const LIMIT_BYTES = 64 * 1024;

/** Which files need not be sent: { hashes: [SHA-256] } -> { known: [SHA-256] }. */
export const POST: RequestHandler = ({ request, locals }) =>
	answerJson(async () => {
		actorOf(locals);
		const { hashes } = await readJsonObject(request, LIMIT_BYTES);
		return { known: await knownFiles(getLedger(), Array.isArray(hashes) ? (hashes as unknown[]) : []) };
	});
