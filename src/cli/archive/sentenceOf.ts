import { LedgerRefusal } from '$lib/server';

/** What a terminal shows of a failure: one line, without characters that could steer it. */
export function sentenceOf(error: unknown): string {
	const said =
		error instanceof LedgerRefusal ? error.sentence : error instanceof Error ? error.message : String(error);
	return said.replace(/\p{Cc}/gu, '?');
}
