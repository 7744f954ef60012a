import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { getPriority, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { READ_LIMITS } from '$lib/ride/limits';
import { AnalysisChild } from '$lib/server/queue/analysisChild';
import { STANDS_BACK } from '$lib/server/queue/standBack';

const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-child-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Answers one file with its own process number, then hangs up but stays alive for a while. */
const HANGS_UP = `
	process.on('message', ({ requestId }) => {
		process.send({ requestId, kind: 'refused', refusal: { code: String(process.pid), sentence: '', detail: '' } },
			() => process.disconnect());
	});
	setTimeout(() => {}, 20_000);
`;

/** Answers with its own priority. */
const TELLS_PRIORITY = `
	import { getPriority } from 'node:os';
	process.on('message', ({ requestId }) => process.send({ requestId, kind: 'refused',
		refusal: { code: String(getPriority()), sentence: '', detail: '' } }));
`;

describe('AnalysisChild', () => {
	it('stands back behind the server, and the spare one further', async () => {
		const entry = join(folder, 'priority.mjs');
		writeFileSync(entry, TELLS_PRIORITY);
		const priorityOf = async (standsBackBy?: number) => {
			const child = new AnalysisChild(entry, undefined, standsBackBy);
			const outcome = await child.analyse({
				path: 'a.fit',
				fileName: 'a.fit',
				bike: {},
				limits: READ_LIMITS,
				columns: null
			});
			child.stop();
			return Number(outcome.kind === 'refused' && outcome.refusal.code);
		};
		const first = await priorityOf();
		expect(first).toBeGreaterThan(getPriority());
		expect(await priorityOf(STANDS_BACK.far)).toBeGreaterThan(first);
	});

	it('takes a fresh process after one that can no longer be reached, so that one loss costs one attempt', async () => {
		const entry = join(folder, 'hangsUp.mjs');
		writeFileSync(entry, HANGS_UP);
		const child = new AnalysisChild(entry);
		const file = { path: 'a.fit', fileName: 'a.fit', bike: {}, limits: READ_LIMITS, columns: null };
		const pids: string[] = [];
		const kinds: string[] = [];
		for (let i = 0; i < 4; i++) {
			const outcome = await child.analyse(file);
			kinds.push(outcome.kind);
			if (outcome.kind === 'refused') pids.push(outcome.refusal.code);
			await new Promise((resolve) => setTimeout(resolve, 100));
		}
		child.stop();
		expect(kinds).toEqual(['refused', 'broke', 'refused', 'broke']);
		expect(new Set(pids).size).toBe(2);
	});
});
