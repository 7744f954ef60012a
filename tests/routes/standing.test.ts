import { render } from 'svelte/server';
import { expect, it } from 'vitest';
import Standing from '../../src/routes/builds/[id]/release/Standing.svelte';

it('keeps each part number of what a criterion still takes on one line, and loses nothing of the sentence', () => {
	const stillTakes = 'Record the batch of EX-BR-15; EX-SE-30, revision A.';
	const { body } = render(Standing, {
		props: {
			criteria: [{ name: 'design', state: 'not yet', sentence: 'Asked for.', stillTakes }],
			buildId: 3
		}
	});
	const spans = [...body.matchAll(/<span class="[^"]*">([^<]*)<\/span>/g)].map(([, text]) => text);
	expect(spans).toEqual(expect.arrayContaining(['EX-BR-15', 'EX-SE-30']));
	const cell = body.match(/data-label="Still takes"[^>]*>(.*?)<\/td>/s)![1];
	expect(cell.replace(/<!--.*?-->|<[^>]*>/gs, '')).toBe(stillTakes);
});

it('parts the way to the next step from the sentence before it', () => {
	const stillTakes = 'Review of 3 events.';
	const { body } = render(Standing, {
		props: { criteria: [{ name: 'rate', state: 'not yet', sentence: 'Asked for.', stillTakes }], buildId: 3 }
	});
	const cell = body.match(/data-label="Still takes"[^>]*>(.*?)<\/td>/s)![1];
	expect(cell.replace(/<!--.*?-->|<[^>]*>/gs, '')).toBe('Review of 3 events. Review');
});
