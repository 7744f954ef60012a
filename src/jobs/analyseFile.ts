/**
 * Child process: reads and analyses one file after another on request and hands the results back. It has
 * no ledger; its parent watches its time and memory and may end it at any moment.
 */
import { readFile } from 'node:fs/promises';
import { RideRefused } from '$lib/ride/ride';
import { analyseBytes } from './analysis/analyseBytes';
import type { AnalyseAnswer, AnalyseRequest } from './analysis/messages';
import { endWithParent } from './analysis/endWithParent';
import { troubleForTests } from './analysis/troubleForTests';

endWithParent(Number(process.argv[2]));
process.on('message', (request: AnalyseRequest) => void answer(request));

async function answer(request: AnalyseRequest): Promise<void> {
	const reply = await analyse(request);
	process.send?.(reply, undefined, undefined, (error) => {
		if (error) process.exit(1);
	});
}

async function analyse({ requestId, path, fileName }: AnalyseRequest): Promise<AnalyseAnswer> {
	try {
		const bytes = await readFile(path);
		troubleForTests(bytes);
		return { requestId, kind: 'analysed', file: await analyseBytes(bytes, fileName) };
	} catch (error) {
		if (error instanceof RideRefused) {
			const { code, sentence, detail } = error;
			return { requestId, kind: 'refused', refusal: { code, sentence, detail } };
		}
		const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
		return { requestId, kind: 'broke', detail };
	}
}
