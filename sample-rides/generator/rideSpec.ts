/**
 * Everything that decides a simulated ride, apart from the seed. Figures without a source are the
 * author's estimates ("common practice, no source"); those marked (recordings) were set so that the
 * result scatters as measured on real recordings.
 */
export interface RideSpec {
	/** name of the ride; the file is named after it */
	readonly name: string;
	/** instant of the first record, milliseconds since 1970 UTC */
	readonly startedAtMs: number;
	/** local time minus UTC, seconds */
	readonly localOffsetS: number;
	/** the ride ends when either is reached */
	readonly maxDurationS: number;
	readonly maxDistanceM: number;
	readonly bike: BikeSpec;
	readonly rider: RiderSpec;
	readonly road: RoadSpec;
	readonly hub: HubSpec;
	readonly recorder: RecorderSpec;
}

export interface BikeSpec {
	/** teeth, largest first */
	readonly chainrings: readonly number[];
	/** teeth, smallest first */
	readonly cassette: readonly number[];
	/** rolled circumference of the tyre, metres */
	readonly circumferenceM: number;
	/** bicycle, rider and luggage, kg */
	readonly massKg: number;
	/** coefficient of rolling resistance, 0.004 (smooth) to 0.015 (gravel) */
	readonly rollingResistance: number;
	/** drag area, square metres */
	readonly dragAreaM2: number;
	/** share of the crank's power that reaches the hub, 0.97 (DESIGN.md section 2) */
	readonly efficiency: number;
	/** chain slack to be taken up before the driver turns, crank degrees */
	readonly chainSlackDeg: number;
	/** sprockets (teeth) on which the chain may skip under load, with skips per hour at 30 Nm hub torque */
	readonly chainSkip: { readonly sprockets: readonly number[]; readonly perHour: number };
	readonly shifting: ShiftingSpec;
}

export interface ShiftingSpec {
	/** seconds from the command until the chain begins to move */
	readonly delayS: number;
	/** share of torque that the rider keeps while the chain moves, 0 (none) to 1 (shift under load) */
	readonly loadKept: number;
	/** chance that the rear derailleur goes one sprocket too far and comes back */
	readonly overshoot: number;
	/** chance that a shift is regretted and taken back within seconds */
	readonly regret: number;
	/** the device stores shifts */
	readonly recorded: boolean;
	/** seconds by which the stored shift comes before the change of the ratio */
	readonly recordedLeadS: number;
	/** tooth counts that the device was set up with: not necessarily the bike's */
	readonly recordedChainrings: readonly number[];
	readonly recordedCassette: readonly number[];
}

export interface RiderSpec {
	/** power that the rider holds for an hour, W */
	readonly powerW: number;
	/** cadence that the rider likes, rpm */
	readonly cadenceRpm: number;
	/** greatest mean crank torque, Nm */
	readonly maxTorqueNm: number;
	/** relative spread of the slow swings of power */
	readonly unsteadiness: number;
	/** relative spread from one pedal stroke to the next, 0.03 to 0.15 (recordings) */
	readonly strokeSpread: number;
	/** loss of power per hour, share */
	readonly fatiguePerHour: number;
	/** short rests without pedalling per hour on the flat, 5 to 80 (recordings) */
	readonly coastsPerHour: number;
	/** short touches of the brake without pedalling, per hour: the speed falls, the gear stays (recordings) */
	readonly brakeTouchesPerHour: number;
	/** stretches of soft pedalling per hour */
	readonly softPerHour: number;
	/** hard accelerations per hour besides those out of corners */
	readonly sprintsPerHour: number;
	/** chance of a hard acceleration after a corner or a stop */
	readonly sprintsOut: number;
	/** stretches out of the saddle per hour of climbing */
	readonly standsPerHour: number;
	/** how briskly the crank is brought up to speed at a pick-up, rad/s2 */
	readonly pickUpRadS2: number;
	/** how little the rider is put off by a slip, 0 (the legs stop) to 1 (pedals on) */
	readonly composure: number;
	/** chance that a felt slip is marked with a lap */
	readonly marks: number;
	/** laps pressed for no reason, per hour */
	readonly idleMarksPerHour: number;
}

export interface RoadSpec {
	/** standard deviation of the slope, share (0.01 flat, 0.04 hilly) */
	readonly hilliness: number;
	/** length of a slope, metres */
	readonly slopeM: number;
	/** corners that need braking, per km */
	readonly cornersPerKm: number;
	/** stops per km */
	readonly stopsPerKm: number;
	/** slow traffic or a rough stretch to be followed, per km */
	readonly slowdownsPerKm: number;
	/** wind, m/s */
	readonly windMps: number;
	/** spread of the rolling resistance from place to place, share */
	readonly roughness: number;
	/** events of tyre spin per hour at high torque: loose ground */
	readonly spinsPerHour: number;
	readonly wet: boolean;
	readonly temperatureC: number;
	/** indoors: no corners, stops or descents */
	readonly trainer: boolean;
}

export interface HubSpec {
	/** positions per hub turn at which the clutch can take up drive */
	readonly points: number;
	/** slips per hour of driving at 30 Nm mean hub torque, when newly fitted and dry; 0 = healthy */
	readonly slipsPerHour: number;
	/** exponent of hub torque in the rate of slips */
	readonly torqueExponent: number;
	/** growth of the rate with distance since fitting: 1 + (km / wearKm)^wearExponent; Infinity = none */
	readonly wearKm: number;
	readonly wearExponent: number;
	/** distance of the build on this wheel at the start of the ride, km */
	readonly kmSinceFitting: number;
	/** factor on the rates in the wet */
	readonly wetFactor: number;
	/** how much likelier a slip is in the first second after a pick-up */
	readonly pickUpFactor: number;
	/** how much likelier a slip is within 20 s of the last one: chipped or tilted pawls come in bursts */
	readonly burstFactor: number;
	/** chance that a pick-up fails, when newly fitted and dry */
	readonly failedPickUp: number;
	/** median overrun of a slip, crank degrees, and the sigma of its log-normal spread */
	readonly medianOverrunDeg: number;
	readonly overrunSigma: number;
	/** chance that the clutch stays out for one to several crank turns */
	readonly longSlip: number;
}

export type SpeedSensorKind =
	/** one pulse a wheel turn at the driven wheel */
	| 'rear pulse'
	/** turn rate of the driven hub */
	| 'rear rate'
	| 'front pulse'
	| 'front rate'
	| 'gps'
	/** computed by the trainer from power, not from a wheel */
	| 'virtual'
	| 'none';

export interface RecorderSpec {
	readonly speed: {
		readonly kind: SpeedSensorKind;
		/** circumference that the device was set to, metres */
		readonly circumferenceM: number;
		/** relative noise from sample to sample, 0 to 0.05 (recordings) */
		readonly noise: number;
		readonly resolutionMps: number;
		/** seconds that the value comes late (negative: early) */
		readonly lagS: number;
		/** seconds between two new values */
		readonly updateS: number;
		/** missed pulses: samples per hour that fall by 14 to 30 % */
		readonly dipsPerHour: number;
	};
	readonly cadence: {
		/** one pulse a crank turn, held until the next; or the turn rate, averaged */
		readonly kind: 'pulse' | 'rate' | 'none';
		readonly noise: number;
		readonly resolutionRpm: number;
		readonly lagS: number;
		readonly updateS: number;
		/** seconds that the old value stays after pedalling stops */
		readonly freezeS: number;
		readonly spikesPerHour: number;
	};
	readonly power: {
		/** mean over a crank turn, mean over a second, or no power meter */
		readonly kind: 'turn' | 'second' | 'none';
		readonly noise: number;
		/** factor of calibration */
		readonly scale: number;
		readonly lagS: number;
		readonly updateS: number;
		/** seconds over which the meter averages: 1, or 3 on slow ones */
		readonly averageS: number;
	};
	readonly smart: boolean;
	readonly autoPause: boolean;
	/** stretches without records, per hour, and their mean length */
	readonly gapsPerHour: number;
	readonly gapS: number;
	/** stretches in which one sensor gives nothing, per hour */
	readonly sensorLossPerHour: number;
	/** store a track (in the open sea: nobody lives there) */
	readonly position: boolean;
}
