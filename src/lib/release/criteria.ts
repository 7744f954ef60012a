/** One plan, fixed before the test: so much distance on every wheel, so many slips allowed. */
export interface FixedPlan {
	readonly kind: 'fixed';
	/** observed metres that every wheel has to collect */
	readonly observedMPerWheel: number;
	readonly slipsAllowed: number;
}

/** A plan that may end early: after each slip and each kilometre it accepts, rejects or goes on. */
export interface SequentialPlan {
	readonly kind: 'sequential';
	/** a rate, slips per 1000 observed km, that should pass */
	readonly goodPerThousandKm: number;
	/** chance of failing a build that slips only at the good rate, 0 to 1 */
	readonly riskOfFailingGood: number;
	/** observed metres, all wheels together, at which the test ends whatever was found */
	readonly longestObservedM: number;
}

/**
 * What a build has to show before it may be released, written down before the test. A version is never
 * changed: a change is a new version, and only rides that begin after it was set count for it.
 */
export interface ReleaseCriteria {
	/** the rate, slips per 1000 observed km, that must not be reached */
	readonly rateAtMostPerThousandKm: number;
	/** one-sided confidence with which that must be shown, 0 to 1 */
	readonly confidence: number;
	readonly plan: FixedPlan | SequentialPlan;
	/** how many wheels and riders the distance must come from, at least */
	readonly wheels: number;
	readonly riders: number;
	/** counted against expected slips on comparable distance, upper limit; null = not asked for */
	readonly expectedRatioAtMost: number | null;
	/** hub torque above which the old build slipped, Nm, and the observed metres wanted above it */
	readonly hardTorqueNm: number;
	readonly observedMAboveHardTorque: number;
	readonly observedMWet: number;
	readonly observedMDry: number;
	/** measured wear has to stay within its limits up to this distance, metres; null = not asked for */
	readonly plannedLifeM: number | null;
	/** a confirmed slip of this many crank degrees ends the test at once */
	readonly stopAtCrankDeg: number;
}

/** What a build has shown since its criteria were set. All distances in metres. */
export interface TestEvidence {
	readonly wheels: readonly { readonly name: string; readonly observedM: number }[];
	readonly riders: number;
	/** confirmed slips; those less than 10 s apart are one, here and below: a plan takes them as single */
	readonly confirmed: number;
	/** events that nobody has reviewed */
	readonly unreviewed: number;
	/** counted slips (unreviewed among them) by the observed metres at which they came, all wheels together */
	readonly slipsAtObservedM: readonly number[];
	/** the confirmed ones among them */
	readonly confirmedAtObservedM: readonly number[];
	/** the last third of the observed distance of these rides */
	readonly lastThird: { readonly slips: number; readonly confirmed: number; readonly observedM: number };
	/** how many slips the recordings of these rides would not have shown */
	readonly notFound: {
		/** rides into which slips are still to be put */
		readonly ridesWaiting: number;
		/** null = too few were put in to tell */
		readonly factor: {
			/** so many slips, at least 1, may stand for one that was found: upper 95 % limit */
			readonly upper: number;
			readonly put: number;
			readonly found: number;
		} | null;
	};
	/** null = the reference build has nothing to compare with */
	readonly expected: {
		readonly ratioUpper: number;
		/** two-sided confidence of that limit */
		readonly confidence: number;
		/** share of the new build's observed distance that could be compared, 0 to 1 */
		readonly comparableShare: number;
	} | null;
	readonly observedMAboveHardTorque: number;
	readonly observedMWet: number;
	readonly observedMDry: number;
	/** what was measured of wear, each with the distance at which its lower limit reaches the wear limit */
	readonly wear: readonly {
		readonly name: string;
		/** metres; null = no line yet (fewer than four points); Infinity = not within sight */
		readonly reachesLimitAtLeastM: number | null;
	}[];
	readonly design: {
		/** the build's parts can no longer be changed */
		readonly frozen: boolean;
		readonly handFittedParts: readonly string[];
		readonly partsWithoutBatch: readonly string[];
	};
	readonly benchCheck: 'recorded' | 'overridden' | null;
	readonly openMarks: number;
	readonly openIncidents: number;
	/** reported injuries or crashes, closed or not */
	readonly injuries: number;
	readonly largestConfirmedCrankDeg: number;
	readonly missingOnBuildSheet: readonly string[];
}

export const CRITERION_NAMES = [
	'rate',
	'wheels',
	'riders',
	'counted against expected',
	'high torque',
	'wet and dry',
	'last third',
	'slips not found',
	'wear',
	'design',
	'bench check',
	'review',
	'incidents',
	'build sheet',
	'stop rule'
] as const;
export type CriterionName = (typeof CRITERION_NAMES)[number];

/** How one criterion stands. */
export interface CriterionState {
	readonly name: CriterionName;
	readonly state: 'holds' | 'not yet' | 'fails' | 'out of reach';
	/** what was asked for and what there is, with the figures */
	readonly sentence: string;
	/** what it still takes inside the plan; null when it holds, fails or is out of reach */
	readonly stillTakes: string | null;
}

/** How figures are written for the reader; the formats of the pages fit. */
export interface NumberWords {
	/** measured metres as kilometres with the unit */
	readonly km: (metres: number) => string;
	/** metres that somebody set, as kilometres with the unit: no nought at the end */
	readonly kmSet: (metres: number) => string;
	/** a figure that somebody set, with its own decimals */
	readonly set: (value: number) => string;
	readonly number: (value: number, decimals?: number) => string;
	/** a rate or ratio with the digits that matter */
	readonly figure: (value: number) => string;
	readonly share: (value: number) => string;
}
