/** How much was ridden under one condition. "Driven": under drive; "observed": on observed stretches. */
export interface ExposureAmount {
	readonly drivenM: number;
	readonly drivenS: number;
	readonly observedM: number;
	readonly observedS: number;
	/** crank turns under drive; each has two power strokes */
	readonly drivenTurns: number;
	/** those of them on observed stretches */
	readonly observedTurns: number;
	/** pressing begins after coasting, soft pedalling or standing */
	readonly pickUps: number;
	readonly observedPickUps: number;
}

/** Exposure at one hub torque in one gear, both as they were just before: as events are filed. */
export interface ExposureCell extends ExposureAmount {
	/** lower edge of the torque bin, Nm; null = the torque is not known there (never 0) */
	readonly torqueFromNm: number | null;
	/** upper edge, Nm; null = open upwards, or not known */
	readonly torqueToNm: number | null;
	/** label of the gear as in the ride's gear list; null = no gear is known there */
	readonly gear: string | null;
	/** chainring / sprocket */
	readonly ratio: number | null;
}

/** Exposure of one hour of the ride, 0 = the first, by the clock and with pauses. */
export interface ExposureHour extends ExposureAmount {
	readonly hour: number;
}

/** A rider's lap and whether a slip felt just before it would have been seen. */
export interface MarkExposure {
	readonly timeS: number;
	/** at least half of the driven seconds in the 15 s before it lie on observed stretches */
	readonly observed: boolean;
}

/**
 * What a ride was exposed to. Cells and hours each add up to the whole ride: to its driven and observed
 * metres and to its pick-ups.
 */
export interface RideExposure {
	readonly cells: readonly ExposureCell[];
	readonly hours: readonly ExposureHour[];
	readonly marks: readonly MarkExposure[];
}
