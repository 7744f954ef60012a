import type { StripGroundPaths } from './groundPaths';
import type { LinearScale } from './linearScale';
import type { SceneSigns, StripScene } from './paintScene';
import type { PlotBox } from './pixelBox';
import type { StripTrace } from './strip';
import type { StripPlaces } from './stripPlaces';

/** What a strip shows. */
interface ShownStrip {
	readonly places: StripPlaces;
	readonly ground: StripGroundPaths;
	readonly y: LinearScale;
	readonly box: PlotBox;
	/** values of the grid lines */
	readonly grid: readonly number[];
	readonly traces: readonly StripTrace[];
	/** [leading, compared]: filled where the first lies above the second */
	readonly filled: readonly [StripTrace, StripTrace] | null;
	readonly signs: SceneSigns | null;
}

/**
 * A strip as plain values: of its lines what the window shows, and where.
 *
 * @param ratio device pixels a CSS pixel
 */
export function stripScene(
	{ places, ground, y, box, grid, traces, filled, signs }: ShownStrip,
	ratio: number
): StripScene {
	const left = Math.round(box.left * ratio);
	return {
		kind: 'strip',
		ground: ground.spans,
		y: { start: y.start, slope: y.slope },
		box,
		grid,
		lines: traces.map(({ levels, tone, dashed = false }) => ({
			...places.columns(levels, ratio, left),
			tone,
			dashed
		})),
		filled: filled && [traces.indexOf(filled[0]), traces.indexOf(filled[1])],
		signs
	};
}
