/**
 * The drive as a hidden Markov model (Rabiner 1989, Proceedings of the IEEE 77): in each second the rider is in one
 * of these states in one of the bike's gears. Chances of a change a second are common practice, no source; they are
 * the same for every ride, so that rides stay comparable.
 */
export const MODEL_STATES = [
	'driving',
	'settling',
	'coasting',
	'picking up',
	'slip',
	'after slip',
	'ring changed'
] as const;
export const DRIVING = 0;
export const SETTLING = 1;
export const COASTING = 2;
export const PICKING_UP = 3;
export const SLIP = 4;
export const AFTER_SLIP = 5;
/** the chain is on another chainring and the sprockets that make up for it have not followed yet */
export const RING_CHANGED = 6;
export const STATES = 7;

/** Chance of going from one state to another within the same gear, by row; what is left of a driving second shifts. */
export const WITHIN_GEAR: readonly (readonly number[])[] = [
	[0.93, 0, 0.018, 0, 0.0002, 0, 0.0005],
	[0.58, 0.22, 0.04, 0, 0.0006, 0, 0.002],
	[0.035, 0, 0.855, 0.08, 0, 0, 0],
	[0.55, 0, 0.06, 0.36, 0.0008, 0, 0],
	[0.24, 0, 0.1, 0.01, 0.25, 0.4, 0],
	[0.3, 0, 0.14, 0.05, 0.002, 0.5, 0],
	[0.5, 0, 0.03, 0, 0.0004, 0, 0.35]
];

/** Chance of a change of gear, by state left and state entered: a shift settles at once, or within seconds. */
export const TO_OTHER_GEAR: readonly {
	readonly from: number;
	readonly to: number;
	readonly chance: number;
}[] = [
	{ from: DRIVING, to: SETTLING, chance: 0.03 },
	{ from: DRIVING, to: DRIVING, chance: 0.02 },
	{ from: SETTLING, to: SETTLING, chance: 0.13 },
	{ from: SETTLING, to: DRIVING, chance: 0.03 },
	{ from: COASTING, to: COASTING, chance: 0.03 },
	{ from: PICKING_UP, to: SETTLING, chance: 0.03 },
	{ from: DRIVING, to: RING_CHANGED, chance: 0.003 },
	{ from: SETTLING, to: RING_CHANGED, chance: 0.02 },
	{ from: RING_CHANGED, to: RING_CHANGED, chance: 0.1 },
	{ from: RING_CHANGED, to: DRIVING, chance: 0.02 }
];
/** This share of changes goes to the gears beside, the others to any gear. */
export const TO_NEAR_GEAR = 0.7;
/** So many gears on each side count as beside: with two chainrings, ratios of both interleave. */
export const NEAR_GEARS = 3;
