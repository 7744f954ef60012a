import { describe, expect, it } from 'vitest';
import { cleanFileName } from '$lib/server';

describe('cleanFileName', () => {
	it.each([
		['Morning ride.fit', 'Morning ride.fit'],
		['..\\..\\rides/Morning ride.fit', 'Morning ride.fit'],
		['/etc/passwd', 'passwd'],
		['../../..', 'unnamed'],
		['', 'unnamed'],
		['...fit', 'fit'],
		['=cmd|calc!.fit', 'cmdcalc!.fit'],
		['-rf.fit', 'rf.fit'],
		['a\u0000b\u202Etif.fit', 'abtif.fit'],
		['line\nbreak.fit', 'linebreak.fit'],
		['CON', '_CON'],
		['lpt1.fit', '_lpt1.fit'],
		['Fahrt nach Süden.fit', 'Fahrt nach Süden.fit'],
		['夕方.fit', '夕方.fit']
	])('makes of %j the name %j', (sent, kept) => {
		expect(cleanFileName(sent)).toBe(kept);
	});

	it('shortens long names and keeps their ending', () => {
		const name = cleanFileName(`${'é'.repeat(400)}.fit`);
		expect(name).toHaveLength(120);
		expect(name.endsWith('.fit')).toBe(true);
	});

	it('does not cut a character in half', () => {
		const name = cleanFileName(`x${'🚲'.repeat(200)}.fit`);
		expect(name.isWellFormed()).toBe(true);
		expect(name.length).toBeLessThanOrEqual(120);
		// found by the fuzz test: half a character that came in went out again
		expect(cleanFileName('a\uD83D.fit').isWellFormed()).toBe(true);
	});

	it('cleaned names stay as they are', () => {
		for (const name of ['CON', '=1', '..\\x', 'a'.repeat(300), ' b . '])
			expect(cleanFileName(cleanFileName(name))).toBe(cleanFileName(name));
	});
});
