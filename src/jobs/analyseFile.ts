/**
 * Child process: reads one file after another on request, analyses it or puts slips into it, and hands the
 * results back. It has no ledger; its parent watches its time and memory and may end it at any moment.
 */
import { readFile } from 'node:fs/promises';
import { decodeRide } from '$lib/ride/decodeRide';
import { RideRefused } from '$lib/ride/ride';
import { insertionTest } from '$lib/slip/insertionTest';
import { analyseBytes } from './analysis/analyseBytes';
import type { AnalyseAnswer, ChildRequest } from './analysis/messages';
import { endWithParent } from './analysis/endWithParent';
import { troubleForTests } from './analysis/troubleForTests';

endWithParent(Number(process.argv[2]));
process.on('message', (request: ChildRequest) => void answer(request));

async function answer(request: ChildRequest): Promise<void> {
	const reply = await work(request);
	process.send?.(reply, undefined, undefined, (error) => {
		if (error) process.exit(1);
	});
}

async function work(request: ChildRequest): Promise<AnalyseAnswer> {
	const { requestId, path, fileName, bike, limits, columns } = request;
	try {
		const bytes = await readFile(path);
		troubleForTests(bytes);
		if (request.kind === 'analyse')
			return {
				requestId,
				kind: 'analysed',
				file: await analyseBytes(bytes, fileName, bike, limits, columns)
			};
		const result = insertionTest(await decodeRide(bytes, fileName, limits, columns), bike, request.seed);
		return { requestId, kind: 'inserted', result };
	} catch (error) {
		if (error instanceof RideRefused) {
			const { code, sentence, detail } = error;
			return { requestId, kind: 'refused', refusal: { code, sentence, detail } };
		}
		const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
		return { requestId, kind: 'broke', detail };
	}
}
