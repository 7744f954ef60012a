/** The hatching of src/lib/charts/StripGround.svelte: slanted lines this far apart, this thick, CSS pixels. */
export const HATCH = { every: 6, thickness: 0.8, opacity: 0.75 } as const;

/**
 * The hatching as shares of ink: the pixel at (x, y) takes the share number (x + y) modulo the length.
 *
 * @param ratio device pixels a CSS pixel
 */
export function hatchTile(ratio: number): Float32Array {
	const period = Math.max(2, Math.round(HATCH.every * ratio));
	// lines run at 45 degrees: across x + y they are thicker by the root of two
	const half = (HATCH.thickness * ratio) / Math.SQRT2;
	return Float32Array.from({ length: period }, (_, place) => {
		const middle = place + 1;
		const off = ((middle + period / 2) % period) - period / 2;
		return HATCH.opacity * (coveredBefore(half - off) - coveredBefore(-half - off));
	});
}

/** the share of a unit square around the origin on which x + y lies below a limit */
function coveredBefore(limit: number): number {
	if (limit <= -1) return 0;
	if (limit >= 1) return 1;
	return limit < 0 ? (1 + limit) ** 2 / 2 : 1 - (1 - limit) ** 2 / 2;
}
