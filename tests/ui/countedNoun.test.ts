import { expect, it } from 'vitest';
import { countedNoun } from '$lib/ui/countedNoun';

it('calls a slip only what counts once everything that counts is confirmed', () => {
	expect(countedNoun(1, 0)).toBe('slip');
	expect(countedNoun(4, 0)).toBe('slips');
	expect(countedNoun(1, 1)).toBe('event');
	expect(countedNoun(4, 2)).toBe('events');
});
