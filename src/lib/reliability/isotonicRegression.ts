import { checkExposure, checkFinite } from './checks';

/** Events among trials (or over an exposure) at one value of an influence. */
export interface InfluencePoint {
	readonly x: number;
	readonly events: number;
	/** trials or exposure, >= 0 */
	readonly exposure: number;
}

export interface IsotonicPoint extends InfluencePoint {
	/** events / exposure here */
	readonly raw: number;
	/** the same, smoothed as little as is needed for it never to fall with x */
	readonly fitted: number;
}

/**
 * The curve of events per exposure that never falls with x and lies nearest to what was seen. It has no shape of
 * its own: steps where the data have steps, level where they contradict a rise. Equal x are pooled first, so
 * that their order plays no part.
 *
 * @param points in any order; points without exposure are left out
 * @returns one point for each different x, in rising order; empty without exposure
 * @throws RangeError for an x that is not finite, or negative events or exposure
 * @example isotonicRegression([{ x: 1, events: 1, exposure: 4 }, { x: 2, events: 0, exposure: 4 }])
 *   // fitted 0.125 at both
 * Source: pool-adjacent-violators, Barlow, Bartholomew, Bremner and Brunk 1972, Statistical Inference under
 * Order Restrictions (from memory); checked against R's isoreg in tests/published.
 */
export function isotonicRegression(points: readonly InfluencePoint[]): IsotonicPoint[] {
	const pooled = poolTies(points);
	const blocks: { events: number; exposure: number; size: number }[] = [];
	for (const { events, exposure } of pooled) {
		let block = { events, exposure, size: 1 };
		// a block that lies below the one before is joined with it, and so on backwards
		for (let before = blocks.at(-1); before && rate(before) >= rate(block); before = blocks.at(-1)) {
			blocks.pop();
			block = {
				events: before.events + block.events,
				exposure: before.exposure + block.exposure,
				size: before.size + block.size
			};
		}
		blocks.push(block);
	}
	const fitted = blocks.flatMap((block) => new Array<number>(block.size).fill(rate(block)));
	return pooled.map((point, i) => ({ ...point, raw: rate(point), fitted: fitted[i] }));
}

function rate({ events, exposure }: { events: number; exposure: number }): number {
	return events / exposure;
}

/** one point for each different x, in rising order */
function poolTies(points: readonly InfluencePoint[]): InfluencePoint[] {
	const byX = new Map<number, { events: number; exposure: number }>();
	for (const { x, events, exposure } of points) {
		checkFinite('x', x);
		checkExposure('events', events);
		checkExposure('exposure', exposure);
		if (exposure === 0) continue;
		const sum = byX.get(x) ?? { events: 0, exposure: 0 };
		byX.set(x, { events: sum.events + events, exposure: sum.exposure + exposure });
	}
	return [...byX].map(([x, sum]) => ({ x, ...sum })).sort((a, b) => a.x - b.x);
}
