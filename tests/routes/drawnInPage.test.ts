import { createRawSnippet } from 'svelte';
import { render } from 'svelte/server';
import { expect, it } from 'vitest';
import DrawnInPage from '../../src/routes/compare/DrawnInPage.svelte';

const drawn = (points: number) => {
	const children = createRawSnippet(() => ({ render: () => '<i>the drawing</i>' }));
	return render(DrawnInPage, { props: { points, heightPx: 284, children } }).body;
};

it('a drawing of few points comes from the server', () => {
	expect(drawn(400)).toContain('the drawing');
});

it('a drawing of very many is left to the page: its room is kept, and who has no script is told where else to look', () => {
	const body = drawn(401);
	expect(body).not.toContain('the drawing');
	expect(body).toContain('height="284"');
	expect(body).toMatch(/<noscript>.*the table below tells the same.*<\/noscript>/);
});
