import { LANE_COLUMN, type LaneSum } from './driveLanes';
import type { StripGroundPaths } from './groundPaths';
import type { LanesScene, SceneWords } from './paintScene';
import type { StripPlaces } from './stripPlaces';

/** What the ribbon shows; see LanesScene. */
interface ShownLanes extends Omit<LanesScene, 'kind' | 'ground' | 'lanes' | 'column' | 'names' | 'axis'> {
	readonly places: StripPlaces;
	readonly ground: StripGroundPaths;
	readonly lanes: readonly LaneSum[];
	/** gears and where they begin, CSS pixels */
	readonly names: readonly { readonly x: number; readonly label: string }[];
	readonly ticks: readonly { readonly x: number; readonly label: string }[];
	/** y of the axis, CSS pixels */
	readonly axisTop: number;
}

/**
 * The ribbon as plain values: each column of a lane is filled as high as its share, so that a ride of hours drives
 * as much on the drawing as it drove.
 *
 * @param ratio device pixels a CSS pixel
 */
export function lanesScene(
	{ places, ground, box, lanes, shifts, lines, lane, fill, names, ticks, axisTop }: ShownLanes,
	ratio: number
): LanesScene {
	const [left, width] = [Math.round(box.left * ratio), Math.max(1, Math.round(box.width * ratio))];
	const column = Math.max(1, Math.round(LANE_COLUMN * ratio));
	const count = Math.ceil(width / column);
	const edges = new Float64Array(count + 1);
	const most = lanes.length ? lanes[0].length - 1 : 0;
	for (let i = 0; i <= count; i++) {
		const timeS = places.timeAt((left + Math.min(width, i * column)) / ratio);
		// a second's state holds for half a second on either side
		edges[i] = Math.min(most, Math.max(0, timeS + 0.5));
	}
	return {
		kind: 'lanes',
		ground: ground.spans,
		box,
		lanes: lanes.map((sum) => sharesOf(sum, edges)),
		shifts,
		column,
		lines,
		lane,
		fill,
		names: wordsOf(names),
		axis: { left: places.left, right: places.right, top: axisTop, ticks: wordsOf(ticks) }
	};
}

function wordsOf(labels: ShownLanes['ticks']): SceneWords {
	return { x: Float32Array.from(labels, ({ x }) => x), words: labels.map(({ label }) => label) };
}

/** of each column, from edge to edge, the share that was spent in a lane: see `laneShare` */
function sharesOf(sum: LaneSum, edges: Float64Array): Float32Array {
	const shares = new Float32Array(edges.length - 1);
	let before = 0;
	for (let i = 0; i < edges.length; i++) {
		const whole = Math.floor(edges[i]);
		const part = edges[i] - whole;
		// what lies before the end of a column lies before the begin of the next
		const after = part > 0 ? sum[whole] + part * (sum[whole + 1] - sum[whole]) : sum[whole];
		if (i > 0) {
			const lengthS = edges[i] - edges[i - 1];
			shares[i - 1] = lengthS > 0 ? (after - before) / lengthS : 0;
		}
		before = after;
	}
	return shares;
}
