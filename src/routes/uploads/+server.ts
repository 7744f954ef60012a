import { answerJson, createUpload, getLedger, hintsFrom, readJsonObject, type RideHints } from '$lib/server';
import { actorOf } from '../forms';
import type { RequestHandler } from './$types';

const LIMIT_BYTES = 8 * 1024;

/**
 * Announces a file: { name, size, wheelId?, bikeId?, riderId?, trainer?, wet?, lapsMeanSlips?, surface?,
 * loadKg? } -> { id, offset }.
 */
export const POST: RequestHandler = ({ request, locals }) =>
	answerJson(async () => {
		const actor = actorOf(locals);
		const { name, size, ...hints } = await readJsonObject(request, LIMIT_BYTES);
		return createUpload(getLedger(), actor, {
			name: String(name ?? ''),
			size: Number(size),
			hints: hintsFrom(getLedger(), actor, hints as RideHints)
		});
	}, 201);
