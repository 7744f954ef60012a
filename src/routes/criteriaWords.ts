import type { ProgrammeStory } from '$lib/server';
import type { Formats } from '$lib/ui/formats';

/** How the criteria of a build stand, in a few words. */
export function criteriaWords(
	{ state, hold, asked, failing }: NonNullable<ProgrammeStory['criteria']>,
	formats: Pick<Formats, 'number'>
): { lead: string; more: string } {
	const lead = `${formats.number(hold)} of ${formats.number(asked)} hold`;
	if (state === 'all hold') return { lead, more: 'an owner may sign' };
	if (state === 'stopped') return { lead, more: `it does not pass: ${failing.join(', ')}` };
	return { lead, more: 'the test goes on' };
}
