import type { BinnedRate } from '../evidence/binnedRates';
import type { BuildAgainstBuild, BuildTold, ComparisonPolicy } from '../evidence/buildAgainstBuild';
import { csvCell } from '$lib/tables/csvCell';
import type { DrawnLine, RateView } from '../views';

/** Charts that can be had as a drawing and as a table. */
export const CHART_NAMES = [
	'rates',
	'over-age',
	'over-torque',
	'over-hours',
	'torque-curve',
	'mean-slips',
	'slips-over-distance'
] as const;
export type ChartName = (typeof CHART_NAMES)[number];

type Cell = string | number | null;

const RATE_COLUMNS = ['slips', 'observed_km', 'per_100_observed_km', 'lower', 'upper', 'confidence'] as const;

/**
 * The figures behind a chart as comma-separated values (RFC 4180), kilometres and slips per 100 observed km.
 * An empty cell is a figure that cannot be given: a rate of nothing observed, a limit without bound.
 *
 * @param lines for the chart of slips over distance: one a build and wheel
 */
export function chartCsv(name: ChartName, told: BuildAgainstBuild, lines: readonly DrawnLine[]): string {
	return toCsv(TABLES[name](told, lines));
}

type Table = (told: BuildAgainstBuild, lines: readonly DrawnLine[]) => Cell[][];

const TABLES: Readonly<Record<ChartName, Table>> = {
	rates: ({ builds }) => [
		['build', 'unreviewed_count_as', 'wheel', ...RATE_COLUMNS],
		...builds.flatMap((build) => [...ratesOf(build, 'slips'), ...ratesOf(build, 'none')])
	],
	'over-age': ({ builds, policy }) => binned(builds, 'overAge', ageColumn(policy), 1000),
	'over-torque': ({ builds }) => binned(builds, 'overTorque', 'mean_hub_torque_nm', 1),
	'over-hours': ({ builds }) => binned(builds, 'overHours', 'hours_of_the_ride', 1),
	'torque-curve': ({ builds }) => [
		['build', 'line', 'mean_hub_torque_nm', 'slips', 'power_strokes', 'per_10000_strokes', 'lower', 'upper'],
		...builds.flatMap(({ name, torqueCurve: { points, smooth } }) => [
			...points.map(({ fromNm, slips, strokes, neverFalling }): Cell[] => [
				name,
				'never falling, from',
				fromNm,
				slips,
				strokes,
				neverFalling,
				null,
				null
			]),
			...smooth.map(({ torqueNm, value, lower, upper }): Cell[] => [
				name,
				'smooth, at',
				torqueNm,
				null,
				null,
				value,
				lower,
				upper
			])
		])
	],
	'mean-slips': ({ builds, policy }) => [
		['build', ageColumn(policy), 'mean_slips_of_one_wheel', 'lower', 'upper'],
		...builds.flatMap(({ name, life }) =>
			life.curve.map(({ atM, value, lower, upper }): Cell[] => [name, atM / 1000, value, lower, upper])
		)
	],
	'slips-over-distance': (_told, lines) => [
		['build', 'wheel', 'km_since_fitting', 'slips', 'standing'],
		...lines.flatMap(({ build, wheel, slips }) =>
			slips.map(({ atM, count, confirmed }): Cell[] => [
				build,
				wheel,
				atM / 1000,
				count,
				confirmed ? 'confirmed' : 'not reviewed'
			])
		)
	]
};

/** the column's name says from when age was counted */
function ageColumn({ age = 'build' }: ComparisonPolicy): string {
	if (age === 'build') return 'km_since_fitting';
	return age === 'service' ? 'km_since_service' : `km_of_${age.replace(' ', '_')}`;
}

function ratesOf({ name, worst, best }: BuildTold, unreviewed: 'slips' | 'none'): Cell[][] {
	const { pooled, wheels } = unreviewed === 'slips' ? worst : best;
	return [
		[name, unreviewed, 'all', ...rateCells(pooled)],
		...wheels.map((wheel): Cell[] => [name, unreviewed, wheel.name, ...rateCells(wheel.rate)])
	];
}

function binned(
	builds: readonly BuildTold[],
	kind: 'overAge' | 'overTorque' | 'overHours',
	what: string,
	unit: number
): Cell[][] {
	const edge = (value: number | null) => (value === null ? null : value / unit);
	const rows = ({ name, ...build }: BuildTold) =>
		build[kind].map(({ from, to, rate }: BinnedRate): Cell[] => [
			name,
			edge(from),
			edge(to),
			...rateCells(rate)
		]);
	return [['build', `${what}_from`, `${what}_to`, ...RATE_COLUMNS], ...builds.flatMap(rows)];
}

function rateCells(rate: RateView): Cell[] {
	const observed = rate.upperPerHundredKm !== null;
	return [
		rate.count,
		rate.observedM / 1000,
		observed ? rate.ratePerHundredKm : null,
		observed ? rate.lowerPerHundredKm : null,
		rate.upperPerHundredKm,
		rate.confidence
	];
}

function toCsv(rows: readonly Cell[][]): string {
	return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}
