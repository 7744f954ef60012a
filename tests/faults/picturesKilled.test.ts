import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { actorOf, choosePerson, createBuild, openLedger, type VerifyReport } from '$lib/server';
import { sourcePath } from '$lib/server/store/sourceStore';
import { keptAsItCame } from '../server/keptAsItCame';
import { jpegWith, SECRET } from '../server/photos';
import { builtProgram, start, storedSources, until } from './program';

let build: string;
let home: string;
beforeAll(async () => {
	build = await builtProgram();
	home = mkdtempSync(join(tmpdir(), 'slip-ledger-pictures-'));
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

/** A running server may drop the file between its listing and this look: what is gone holds nothing. */
function holdsSecret(path: string): boolean {
	try {
		return readFileSync(path).includes(SECRET);
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
		throw error;
	}
}

async function damages(folder: string): Promise<string[]> {
	const { output } = await start(build, 'verify', ['--data', folder, '--json']).ended;
	return (JSON.parse(output) as VerifyReport).parts.flatMap(({ findings }) =>
		findings.filter(({ severity }) => severity === 'damage').map(({ subject }) => subject)
	);
}

it.each(['picture-cleaned', 'picture-recorded', 'picture-gone'])(
	'a server that is killed at "%s", while it cleans pictures of older programs, goes on with it at its next start',
	async (stage) => {
		const folder = join(home, stage);
		const ledger = openLedger(folder, { migrate: true });
		const actor = actorOf(choosePerson(ledger, 'Tester'));
		const subjectId = createBuild(ledger, actor, { name: 'B', description: '' });
		for (const orientation of [3, 6, 8])
			keptAsItCame(ledger, actor, { subject: 'build', subjectId }, jpegWith({ orientation }));
		ledger.close();
		const secrets = () => storedSources(folder).filter((sha256) => holdsSecret(sourcePath(folder, sha256)));
		const killed = await start(build, 'serve', ['--data', folder, '--port', '0'], {
			SLIP_LEDGER_FAULT: stage
		}).ended;
		expect(killed.signal).toBe('SIGKILL');
		expect(secrets()).toHaveLength(stage === 'picture-gone' ? 2 : 3);
		expect(await damages(folder)).toEqual([]);
		const server = start(build, 'serve', ['--data', folder, '--port', '0']);
		await until('the pictures to be clean', () => secrets().length === 0);
		server.child.kill('SIGTERM');
		await server.ended;
		expect(storedSources(folder)).toHaveLength(3);
		expect(await damages(folder)).toEqual([]);
	}
);
