import type { BuildRow } from '$lib/server/views';
import type { Formats } from '$lib/ui/formats';

/**
 * What was found on the observed distance of a build, in words. Where nothing was observed nothing could
 * have been found, and "none" would be a claim.
 */
export function foundWords(build: Pick<BuildRow, 'observedM' | 'counted'>, formats: Formats): string {
	const { confirmed, unreviewed, rejected } = build.counted;
	if (confirmed + unreviewed + rejected === 0)
		return build.observedM > 0 ? 'none found' : 'nothing could have been found yet';
	const parts = [`${confirmed > 0 ? formats.number(confirmed) : 'none'} confirmed`];
	if (unreviewed > 0) parts.push(`${formats.number(unreviewed)} not reviewed`);
	if (rejected > 0) parts.push(`${formats.number(rejected)} rejected`);
	return parts.join(', ');
}
