import { render } from 'svelte/server';
import { expect, it } from 'vitest';
import type { BuildAgainstBuild } from '$lib/server';
import { shownComparison } from '$lib/server/figures/shownComparison';
import type { AgeLine } from '$lib/server/views';
import AgeChart from '../../src/routes/compare/AgeChart.svelte';

/** A wheel with so many slips, each 10.04 km after the other. */
const lineOf = (wheelId: number, slips: number): AgeLine => ({
	buildId: 1,
	build: 'Original',
	wheel: `Wheel ${wheelId}`,
	wheelId,
	rides: [],
	observed: [{ fromM: 0, toM: 400_000 }],
	observedM: 400_000,
	slips: Array.from({ length: slips }, (_, place) => ({
		atM: 10_040.4 * (place + 1),
		count: place + 1,
		eventId: 1000 * wheelId + place,
		rideId: 7,
		confirmed: place % 2 === 0
	})),
	endM: 9_000_000
});

function pageOf(lines: AgeLine[]): string {
	const told = { builds: [] } as unknown as BuildAgainstBuild;
	const { comparison, listed } = shownComparison({ builds: [], lines }, told);
	const props = { comparison, chosen: [1], most: listed.slipsOfLine };
	return render(AgeChart, { props }).body.replace(/<!--.*?-->/g, '');
}

it('lists the first slips of each line as they are, each with the ride that shows it, also where most are only drawn', () => {
	const page = pageOf([lineOf(1, 300), lineOf(2, 300), lineOf(3, 0)]);
	// a hundred rows for three lines
	expect(page.match(/href="\/rides\/7\?event=\d+"/g)).toHaveLength(66);
	expect(page).toMatch(/href="\/rides\/7\?event=1000"[^>]*>confirmed</);
	expect(page).toMatch(/href="\/rides\/7\?event=1031"[^>]*>not reviewed</);
	expect(page).toContain('10.0\u00a0km');
	expect(page).toContain('90.4\u00a0km');
	expect(page).toContain('The first 33 slips of each line');
	expect(page).toContain('none found');
	expect(page).toContain('so many are drawn without marks');
});

it('says nothing of further slips where all are listed', () => {
	const page = pageOf([lineOf(1, 20)]);
	expect(page.match(/href="\/rides\/7\?event=\d+"/g)).toHaveLength(20);
	expect(page).not.toContain('slips of each line');
	expect(page).toContain('Full lozenge: confirmed');
});
