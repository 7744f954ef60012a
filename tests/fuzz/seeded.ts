export type Pick = (below: number) => number;

/** A seeded generator of whole numbers below a bound (Park and Miller 1988, minimal standard). */
export function seeded(seed: number): Pick {
	let state = (seed % 2_147_483_646) + 1;
	// neighbouring seeds begin alike: the first draws are thrown away
	for (let i = 0; i < 3; i++) state = (state * 48_271) % 2_147_483_647;
	return (below) => {
		state = (state * 48_271) % 2_147_483_647;
		return state % below;
	};
}

export const oneOf = <T>(pick: Pick, things: readonly T[]): T => things[pick(things.length)];
