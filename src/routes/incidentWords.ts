import type { IncidentCounts } from '$lib/server';
import type { Formats } from '$lib/ui/formats';

/** What was reported of a build without a ride file: how many count, how many are open or shown otherwise. */
export function incidentWords(incidents: IncidentCounts, formats: Formats): string {
	const { counted, open, apart, harmed } = incidents;
	const words = [
		counted === 0 ? 'none counts' : `${formats.number(counted)} ${counted === 1 ? 'incident' : 'incidents'}`
	];
	if (open > 0) words.push(`${formats.number(open)} open`);
	if (harmed > 0) words.push(`${formats.number(harmed)} with a fall or injury`);
	if (apart > 0) words.push(`${formats.number(apart)} closed as no slip`);
	return words.join(', ');
}
