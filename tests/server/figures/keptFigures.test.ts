import { expect, it } from 'vitest';
import { KeptFigures } from '$lib/server/figures/keptFigures';

const ofBytes = (count: number) => ({ bytes: new Uint8Array(count) });

it('KeptFigures lets go of what was asked for longest ago once it is full, and counts what is replaced', () => {
	const kept = new KeptFigures(100);
	kept.set('a', ofBytes(40));
	kept.set('b', ofBytes(40));
	kept.get('a');
	kept.set('c', ofBytes(40));
	expect(['a', 'b', 'c'].map((name) => kept.get(name) !== undefined)).toEqual([true, false, true]);
	kept.set('a', ofBytes(10));
	kept.set('d', ofBytes(50));
	expect(['a', 'c', 'd'].map((name) => kept.get(name) !== undefined)).toEqual([true, true, true]);
});

it('KeptFigures keeps the newest however large it is', () => {
	const kept = new KeptFigures(100);
	kept.set('a', ofBytes(40));
	kept.set('b', ofBytes(400));
	expect([kept.get('a'), kept.get('b')?.bytes.length]).toEqual([undefined, 400]);
});
