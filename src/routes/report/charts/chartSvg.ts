import { sum } from 'd3';
import { MOST_MARKS } from '$lib/charts/mostMarks';
import CumulativeCurve from '$lib/charts/CumulativeCurve.svelte';
import RateInterval from '$lib/charts/RateInterval.svelte';
import RatesByBin from '$lib/charts/RatesByBin.svelte';
import SlipsOverDistance from '$lib/charts/SlipsOverDistance.svelte';
import TorqueCurve from '$lib/charts/TorqueCurve.svelte';
import type { BuildAgainstBuild, ChartName } from '$lib/server';
import type { DrawnLine } from '$lib/server/views';
import type { Formats } from '$lib/ui/formats';
import { ageAxisWords } from '$lib/ui/policyWords';
import { scaleEndOf } from '../../rateScaleEnd';
import { ageCurves } from './ageCurves';
import { ageLinesOf } from './ageLinesOf';
import { binLabels, type BinKind } from './binLabels';
import { rateRowsOf } from './rateRowsOf';
import { standaloneSvg } from './standaloneSvg';

const WIDTH = 720;
const BINS: Partial<Record<ChartName, BinKind>> = {
	'over-age': 'overAge',
	'over-torque': 'overTorque',
	'over-hours': 'overHours'
};

/** A chart of the comparison as a drawing that stands by itself, in words and figures of these formats. */
export function chartSvg(
	name: ChartName,
	told: BuildAgainstBuild,
	lines: readonly DrawnLine[],
	formats: Formats
): string {
	const counted =
		told.policy.shown === 'found' ? 'Unreviewed events count as slips.' : 'Only confirmed slips count.';
	const names = told.builds.map((build, place) => `${place + 1} ${build.name}`).join(', ');
	const kind = BINS[name];
	if (kind) {
		const { id, title, axis, bins } = binLabels(told, kind, formats);
		const series = told.builds.map((build) => ({
			name: build.name,
			rates: build[kind].map(({ rate }) => rate)
		}));
		const said = `${title}: slips per 100 observed km, 95 % limits. ${names}. ${counted}`;
		return standaloneSvg(
			RatesByBin,
			{ id, label: said, bins, axis, series, width: WIDTH, formats },
			['ChartFrame', 'RatesByBin'],
			said
		);
	}
	if (name === 'rates') {
		const rows = told.builds.flatMap((build) => rateRowsOf(build, true));
		const scaleEnd = scaleEndOf(told.builds.flatMap(({ worst, best }) => [worst.pooled, best.pooled]));
		const said = `Slips per 100 observed km with 95 % limits. ${names}.`;
		return standaloneSvg(
			RateInterval,
			{ label: said, rows, scaleEnd, width: WIDTH, formats },
			['RateInterval'],
			said
		);
	}
	if (name === 'mean-slips') {
		const said = `Mean number of slips of one wheel against ${ageAxisWords(told.policy.age ?? 'build')}, 95 % limits. ${names}. ${counted}`;
		return standaloneSvg(
			CumulativeCurve,
			{
				label: said,
				axis: ageAxisWords(told.policy.age ?? 'build'),
				curves: ageCurves(told),
				width: WIDTH,
				formats
			},
			['ChartFrame', 'CumulativeCurve', 'EndNumbers'],
			said
		);
	}
	if (name === 'torque-curve') {
		const said = `Slips in 10,000 observed power strokes against mean hub torque: steps that never fall, and S-curves with 95 % limits. ${names}. ${counted}`;
		const curves = told.builds.map(({ name: of, torqueCurve: { points, smooth } }) => ({
			name: of,
			points,
			smooth
		}));
		return standaloneSvg(
			TorqueCurve,
			{ label: said, curves, width: WIDTH, formats },
			['ChartFrame', 'TorqueCurve', 'EndNumbers'],
			said
		);
	}
	const slips = sum(lines, (line) => line.slips.length);
	const marked = slips > 0 && slips <= MOST_MARKS;
	const observedM = sum(lines, (line) => line.observedM);
	const said = `Counted slips against the distance since fitting, on ${formats.km(observedM)} observed. ${names}.`;
	return standaloneSvg(
		SlipsOverDistance,
		{ lines: ageLinesOf(lines, told), width: WIDTH, formats },
		['ChartFrame', 'SlipsOverDistance', ...(marked ? ['SlipGlyph'] : []), 'EndNumbers'],
		said
	);
}
