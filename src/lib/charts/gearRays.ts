/** A gear's ray in the plane of speed and cadence, cut at the edge of the drawing. */
export interface GearRay {
	readonly label: string;
	/** where it leaves the drawing */
	readonly speedKmh: number;
	readonly cadenceRpm: number;
	/** false where its label would run into the one before */
	readonly labelled: boolean;
}

/**
 * The ray of each gear: while the freehub holds, cadence = speed / development.
 *
 * @param gears metres per crank turn, > 0
 * @param speedKmh greatest speed drawn
 * @param cadenceRpm greatest cadence drawn
 * @param least share of the drawing's edge between two labels, 0 to 1
 * @returns in order of the edge: from the easiest gear (top left) to the hardest (bottom right)
 * @example gearRays([{ label: 'a', developmentM: 5 }], 30, 120, 0.05) // leaves at 30 km/h, 100 rpm
 */
export function gearRays(
	gears: readonly { readonly label: string; readonly developmentM: number }[],
	speedKmh: number,
	cadenceRpm: number,
	least: number
): GearRay[] {
	let last = -Infinity;
	return gears
		.filter(({ developmentM }) => developmentM > 0)
		.toSorted((a, b) => a.developmentM - b.developmentM)
		.map(({ label, developmentM }) => {
			const atEdge = (speedKmh * 1000) / 60 / developmentM;
			const top = atEdge > cadenceRpm;
			const ray = top
				? { speedKmh: (cadenceRpm * developmentM * 60) / 1000, cadenceRpm }
				: { speedKmh, cadenceRpm: atEdge };
			// the edge runs along the top, then down the right
			const place = top ? ray.speedKmh / speedKmh : 2 - ray.cadenceRpm / cadenceRpm;
			const labelled = place - last >= least;
			if (labelled) last = place;
			return { label, ...ray, labelled };
		});
}
