import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { prefixErrorPage, withPrefix } from '../../src/cli/prefixPages.mjs';

describe('withPrefix', () => {
	it.each([
		['<a href="/rides">x</a>', '<a href="/slips/rides">x</a>'],
		['<a href="/">x</a>', '<a href="/slips/">x</a>'],
		['<a href="/rides/{ride.id}?event={id}">x</a>', '<a href="/slips/rides/{ride.id}?event={id}">x</a>'],
		['<a href={`/rides/${id}`}>x</a>', '<a href={`/slips/rides/${id}`}>x</a>'],
		["<a href={late ? '/a' : '#b'}>x</a>", "<a href={late ? '/slips/a' : '#b'}>x</a>"],
		["<a href={here ?? '/a'}>x</a>", "<a href={here ?? '/slips/a'}>x</a>"],
		['<form action="/sign-out"></form>', '<form action="/slips/sign-out"></form>'],
		['{#if a}<img src="/x.png" alt="" />{/if}', '{#if a}<img src="/slips/x.png" alt="" />{/if}'],
		['<History href="/ledger/trail?number={id}" />', '<History href="/slips/ledger/trail?number={id}" />']
	])('puts it into %s', (source, wanted) => {
		expect(withPrefix(source, '/slips')).toBe(wanted);
	});

	it.each([
		'<a href="#felt">x</a>',
		'<a href="?page=2">x</a>',
		'<form action="?/link"></form>',
		'<a href="https://example.org/">x</a>',
		'<a href="//example.org/">x</a>',
		'<a {href}>x</a>',
		'<a href="{PREFIX}{row.href}">x</a>',
		'<p title="/rides">/rides</p>',
		'<script lang="ts">\n\tconst href: string = \'/rides\';\n</script>\n<p>{href}</p>'
	])('leaves %s as it is', (source) => {
		expect(withPrefix(source, '/slips')).toBe(source);
	});

	it('keeps every line where it was', () => {
		const source = '<a\n\thref="/a"\n>x</a>\n<a href="/b">y</a>\n';
		expect(withPrefix(source, '/slips').split('\n')).toHaveLength(source.split('\n').length);
	});
});

describe('prefixErrorPage', () => {
	it('writes the page for what is refused before any page with the prefix in each of its addresses', () => {
		const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-prefix-'));
		const text = readFileSync(
			prefixErrorPage('src/error.html', join(folder, 'a/error.html'), '/slips'),
			'utf8'
		);
		rmSync(folder, { recursive: true });
		const addresses = [...text.matchAll(/(?:href|src)="([^"]*)"/g)].map(([, one]) => one);
		expect(addresses).toEqual(['/slips/favicon.svg', '/slips/error.css', '/slips/', '/slips/']);
		expect(text).toContain('%sveltekit.error.message%');
	});
});
