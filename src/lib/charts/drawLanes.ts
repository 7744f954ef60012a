import { LANE_COLUMN, laneShare, type LaneSum } from './driveLanes';

interface LaneBox {
	/** first and last pixel across */
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly height: number;
}

/**
 * Draws one lane of the ribbon: each column is filled as high as its share of the lane, so that a ride of
 * hours drives as much on the drawing as it drove. Full neighbours are joined.
 *
 * @param timeAt the second of the ride that lies at a pixel; never falls
 */
export function drawLane(
	context: CanvasRenderingContext2D,
	sum: LaneSum,
	timeAt: (pixel: number) => number,
	{ left, right, top, height }: LaneBox
): void {
	context.beginPath();
	let fullFrom: number | null = null;
	let before = timeAt(left);
	for (let x = left; x < right; x += LANE_COLUMN) {
		const next = Math.min(right, x + LANE_COLUMN);
		const after = timeAt(next);
		const share = after > before ? laneShare(sum, before, after) : 0;
		before = after;
		const full = share > 0.999;
		if (full) fullFrom ??= x;
		if (!full && fullFrom !== null) {
			context.rect(fullFrom, top, x - fullFrom, height);
			fullFrom = null;
		}
		if (!full && share > 0) context.rect(x, top + height * (1 - share), next - x, height * share);
	}
	if (fullFrom !== null) context.rect(fullFrom, top, right - fullFrom, height);
	context.fill();
}
