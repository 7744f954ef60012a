import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { nodeFlags } from '../faults/runCommand';

/** Makes much that lives for a while; prints how large the part for what was just made has become, megabytes. */
const WORK = `
const v8 = require('node:v8');
for (let round = 0; round < 12; round++) {
	globalThis.kept = [];
	for (let i = 0; i < 300000; i++) globalThis.kept.push({ i, word: 'x' + i });
}
const { space_size } = v8.getHeapSpaceStatistics().find(({ space_name }) => space_name === 'new_space');
process.stdout.write(String(space_size / 2 ** 20));
`;
const youngMb = (flags: readonly string[]) =>
	Number(spawnSync(process.execPath, [...flags, '-e', WORK], { encoding: 'utf8' }).stdout);

it('npm start, the service and the container keep the memory for what was just made small, all alike', () => {
	const flags = nodeFlags('serve');
	expect(flags).toEqual(['--max-semi-space-size=8']);
	const unit = readFileSync('src/deploy/slip-ledger.service', 'utf8');
	expect(unit).toContain(`ExecStart=/usr/bin/node ${flags.join(' ')} src/cli/run.mjs serve`);
	const container = readFileSync('src/deploy/Containerfile', 'utf8');
	expect(container).toContain(
		`CMD ["node", ${flags.map((flag) => `"${flag}"`).join(', ')}, "src/cli/run.mjs"`
	);
	// two halves of 8 MB; without the flag they grow to 16 MB each
	expect(youngMb(flags)).toBeLessThanOrEqual(16);
	expect(youngMb([])).toBeGreaterThan(16);
});
