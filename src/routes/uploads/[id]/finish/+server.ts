import { answerJson, finishUpload, getLedger, pokeWebRunner } from '$lib/server';
import { actorOf } from '../../../forms';
import type { RequestHandler } from './$types';

/** Everything has come: { importId }. May be asked again. */
export const POST: RequestHandler = ({ params, locals }) =>
	answerJson(async () => {
		const finished = await finishUpload(getLedger(), actorOf(locals), params.id);
		pokeWebRunner();
		return finished;
	});
