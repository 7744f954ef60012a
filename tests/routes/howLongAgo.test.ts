import { expect, it } from 'vitest';
import { createFormats } from '$lib/ui/formats';
import { howLongAgo } from '../../src/routes/howLongAgo';

const NOW_MS = Date.UTC(2026, 4, 4, 12);
const formats = createFormats('en-GB', 'UTC');
const ago = (seconds: number) => howLongAgo(new Date(NOW_MS - seconds * 1000).toISOString(), formats, NOW_MS);

it('howLongAgo counts minutes, and names day and time from an hour on or when the clock was set back', () => {
	expect([ago(5), ago(60), ago(119), ago(200), ago(3599)]).toEqual([
		'less than a minute ago',
		'a minute ago',
		'a minute ago',
		'3 minutes ago',
		'59 minutes ago'
	]);
	expect(ago(3600)).toContain('11:00');
	expect(ago(-120)).toContain('12:02');
});
