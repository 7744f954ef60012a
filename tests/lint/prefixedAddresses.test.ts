import { RuleTester } from 'eslint';
import svelteParser from 'svelte-eslint-parser';
import { describe, it } from 'vitest';
import { prefixedAddresses } from './prefixedAddresses.js';

RuleTester.describe = describe;
RuleTester.it = it;

const ts = (code: string) => ({ filename: `${process.cwd()}/src/routes/a.ts`, code });
const page = (code: string) => ({
	filename: `${process.cwd()}/src/routes/A.svelte`,
	code,
	languageOptions: { parser: svelteParser }
});

new RuleTester().run('the prefixed-addresses rule', prefixedAddresses, {
	valid: [
		ts('fetch(`${PREFIX}/uploads`);'),
		ts('fetch(address);'),
		ts('goto(`?event=${id}`);'),
		ts("import { error } from '@sveltejs/kit';"),
		page('<a href="/rides">x</a>'),
		page('<a href="{PREFIX}{row.href}">x</a>'),
		page('<a {href}>x</a>'),
		page('<p title={row.href}>x</p>'),
		{ ...ts("import { redirect } from '@sveltejs/kit';"), filename: 'src/lib/address/redirectTo.ts' }
	],
	invalid: [
		{ ...ts("fetch('/uploads');"), errors: [{ messageId: 'call' }] },
		{ ...ts('options.fetch(`/uploads/${id}`);'), errors: [{ messageId: 'call' }] },
		{ ...ts("goto('/rides/' + id);"), errors: [{ messageId: 'call' }] },
		{ ...ts("goto(late ? '/rides' : '?a');"), errors: [{ messageId: 'call' }] },
		{ ...ts("import { error, redirect } from '@sveltejs/kit';"), errors: [{ messageId: 'redirect' }] },
		{ ...page('<a href={row.href}>x</a>'), errors: [{ messageId: 'data' }] },
		{ ...page('<a href="{row.href}#felt">x</a>'), errors: [{ messageId: 'data' }] },
		{ ...page('<form action={row.path}></form>'), errors: [{ messageId: 'data' }] }
	]
});
