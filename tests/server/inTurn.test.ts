import { expect, it } from 'vitest';
import { inTurn } from '$lib/server/inTurn';

it('does one piece after the other, and lets whoever asked meanwhile go between two of them', async () => {
	const order: string[] = [];
	const turn = () => new Promise<void>((resolve) => setImmediate(resolve));
	const pieces = ['a', 'b', 'c'].map((name) =>
		inTurn(() => {
			order.push(name);
			// what a page's request does
			setImmediate(() => order.push(`page beside ${name}`));
		})
	);
	order.push('asked for');
	await Promise.all(pieces);
	await turn();
	expect(order).toEqual(['asked for', 'a', 'page beside a', 'b', 'page beside b', 'c', 'page beside c']);
});

it('gives back what the work returns, and what it throws, without holding up the next', async () => {
	const failed = inTurn(() => {
		throw new Error('no');
	});
	const after = inTurn(() => 7);
	await expect(failed).rejects.toThrow('no');
	expect(await after).toBe(7);
});
