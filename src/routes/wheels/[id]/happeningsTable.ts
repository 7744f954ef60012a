import type { ChartTable } from '$lib/charts/chartTable';
import type { Happening } from './happenings';

/** What lies along a wheel's distance. */
export function happeningsTable(rows: readonly Happening[]): ChartTable {
	const km = (metres: number | null) => (metres === null ? null : metres / 1000);
	return {
		columns: ['what', 'at_km', 'at_utc', 'length_km', 'observed_km'],
		rows: rows.map(({ what, atM, at, lengthM, observedM }) => [what, km(atM), at, km(lengthM), km(observedM)])
	};
}
