import type { ChartTable } from '$lib/charts/chartTable';
import type { ProgrammeStory } from '$lib/server';
import type { BuildRow } from '$lib/server/views';

/** How much of a build's distance could have shown a slip of the reference size. */
export function shareTable({
	name,
	observedM,
	totalM
}: Pick<BuildRow, 'name' | 'observedM' | 'totalM'>): ChartTable {
	return {
		columns: ['build', 'observed_km', 'ridden_km', 'observed_share'],
		rows: [[name, observedM / 1000, totalM / 1000, totalM > 0 ? observedM / totalM : null]]
	};
}

/** The steps of a build's small curve, and the distance at which it ends. */
export function curveTable(
	name: string,
	{ curve, endM }: Pick<ProgrammeStory, 'curve' | 'endM'>
): ChartTable {
	const rows = curve.map(({ atM, value }) => [name, atM / 1000, value]);
	return {
		columns: ['build', 'wheel_km', 'mean_slips_of_a_wheel'],
		rows: [...rows, [name, endM / 1000, curve.at(-1)?.value ?? 0]]
	};
}
