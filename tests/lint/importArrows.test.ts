import { RuleTester } from 'eslint';
import { describe, it } from 'vitest';
import { importArrows } from './importArrows.js';

RuleTester.describe = describe;
RuleTester.it = it;

const cwd = process.cwd();
const inRoom = (file: string) => `${cwd}/src/${file}`;

new RuleTester().run('the import-arrows rule', importArrows, {
	valid: [
		{ filename: inRoom('lib/slip/a.ts'), code: "import { b } from '$lib/drivetrain/b';" },
		{ filename: inRoom('lib/slip/a.ts'), code: "import { b } from './b';" },
		{ filename: inRoom('lib/slip/model/a.ts'), code: "import { b } from '../b';" },
		{ filename: inRoom('lib/server/a.ts'), code: "import { join } from 'node:path';" },
		{ filename: inRoom('lib/release/a.ts'), code: "import { b } from '$lib/reliability/b';" },
		{ filename: inRoom('routes/rides/+page.server.ts'), code: "import { b } from '$lib/server';" },
		{ filename: inRoom('cli/slips.ts'), code: "import { b } from '$lib/slip/b';" },
		{ filename: inRoom('hooks.server.ts'), code: "import { b } from '$lib/server';" }
	],
	invalid: [
		{
			filename: inRoom('lib/ride/a.ts'),
			code: "import { b } from '$lib/slip/b';",
			errors: [{ messageId: 'against' }]
		},
		{
			filename: inRoom('lib/ride/a.ts'),
			code: "import { b } from '../slip/b';",
			errors: [{ messageId: 'against' }]
		},
		{
			filename: inRoom('lib/reliability/a.ts'),
			code: "export { b } from '$lib/hardware/b';",
			errors: [{ messageId: 'against' }]
		},
		{
			filename: inRoom('lib/charts/a.ts'),
			code: "import { b } from '$lib/server';",
			errors: [{ messageId: 'against' }]
		},
		{
			filename: inRoom('lib/slip/a.ts'),
			code: "import { readFileSync } from 'node:fs';",
			errors: [{ messageId: 'outside' }]
		},
		{
			filename: inRoom('jobs/a.ts'),
			code: "const b = await import('../lib/server/b');",
			errors: [{ messageId: 'against' }]
		},
		{
			filename: inRoom('lib/server/a.ts'),
			code: "import { b } from '../../cli/b';",
			errors: [{ messageId: 'against' }]
		}
	]
});
