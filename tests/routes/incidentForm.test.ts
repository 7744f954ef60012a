import { render } from 'svelte/server';
import { expect, it } from 'vitest';
import IncidentFields from '../../src/routes/wheels/[id]/incidents/IncidentFields.svelte';
import { typedIncident } from '../../src/routes/wheels/[id]/incidents/incidentForm';

function typed(odometerKm: string) {
	const form = new FormData();
	form.set('at', '2026-05-09T17:30');
	form.set('odometerKm', odometerKm);
	form.set('felt', 'a jerk in the pedals');
	const incident = typedIncident(form);
	return render(IncidentFields, { props: { incident, people: [], kinds: ['slip'], severities: ['noticed'] } })
		.body;
}

it('keeps what was typed in a report that was refused, also an odometer that is no number', () => {
	expect(typed('about 1200')).toContain('value="about 1200"');
	expect(typed('1200,5')).toContain('value="1200,5"');
	expect(typed('')).toContain('a jerk in the pedals');
});
