import type { ChartTable } from '$lib/charts/chartTable';
import type { ReleaseView } from '$lib/server';

type Course = NonNullable<NonNullable<ReleaseView['standing']>['course']>;

/** The course of a plan: each counted slip and the distance reached, with the plan's two lines there. */
export function courseTable({
	slipsAtM,
	observedM,
	slopePerThousandKm,
	passIntercept,
	failIntercept,
	allowedAtEnd
}: Pick<
	Course,
	'slipsAtM' | 'observedM' | 'slopePerThousandKm' | 'passIntercept' | 'failIntercept' | 'allowedAtEnd'
>): ChartTable {
	const rowAt = (metres: number, counted: number) => {
		const risen = (slopePerThousandKm * metres) / 1e6;
		// it fails at the number that is not allowed at the end whatever the line says; below no slip nothing passes
		const fails = Math.min(failIntercept + risen, allowedAtEnd + 1);
		const passes = passIntercept + risen;
		return [metres / 1000, counted, fails, passes < 0 ? null : passes];
	};
	return {
		columns: ['observed_km', 'counted_slips', 'fails_above', 'passes_below'],
		rows: [
			rowAt(0, 0),
			...slipsAtM.map((metres, index) => rowAt(metres, index + 1)),
			rowAt(observedM, slipsAtM.length)
		]
	};
}
