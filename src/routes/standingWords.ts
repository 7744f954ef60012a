import type { IncidentView } from '$lib/server';

/** How an incident stands, one clause. */
export function standingWords({ closing, counts, build }: IncidentView): string {
	const whose = build ? `of ${build.name}` : 'of no build, none was fitted then';
	if (closing === null) return `open; counts as a slip ${whose} until it is shown otherwise`;
	if (counts) return `closed; counts as a slip ${whose}`;
	return `closed: ${closing.outcome}; counts no more`;
}
