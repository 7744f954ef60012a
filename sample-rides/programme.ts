/** The form of programme.json: what the example workshop did, apart from the rides themselves. */
export interface Programme {
	/** says that all of it is invented */
	readonly invented: string;
	readonly workshop: { readonly name: string; readonly timeZone: string };
	/** codes only: R1, R2, R3 */
	readonly riders: readonly { readonly code: string; readonly lapsMeanSlips: boolean }[];
	readonly wheels: readonly ProgrammeWheel[];
	/** in the order in which they were tried */
	readonly builds: readonly ProgrammeBuild[];
	/** in order of time; a wheel's periods do not overlap */
	readonly fittedPeriods: readonly {
		readonly wheel: string;
		readonly build: string;
		/** ISO 8601, UTC */
		readonly from: string;
		/** null = still fitted */
		readonly until: string | null;
	}[];
	/** one entry a file, in order of time */
	readonly rides: readonly ProgrammeRide[];
}

export interface ProgrammeWheel {
	/** "W1"; stands for the wheel in fittedPeriods and rides */
	readonly id: string;
	readonly name: string;
	/** the hub in the trade's words */
	readonly hub: string;
	/** rolled circumference that the devices are set to, metres */
	readonly circumferenceM: number;
	/** the bicycle that the wheel runs in */
	readonly chainrings: readonly number[];
	readonly cassette: readonly number[];
	readonly speedSensor: 'rear' | 'front' | 'gps';
}

export interface ProgrammeBuild {
	/** "original", "prototype-1", "retrofit" */
	readonly id: string;
	readonly name: string;
	readonly description: string;
	readonly pointsOfEngagement: number;
	/** 360 / pointsOfEngagement */
	readonly stepHubDeg: number;
	readonly parts: readonly { readonly part: string; readonly detail: string }[];
}

export interface ProgrammeRide {
	/** file name beside programme.json */
	readonly file: string;
	readonly wheel: string;
	readonly build: string;
	readonly rider: string;
	readonly surface: 'road' | 'gravel' | 'road and gravel' | 'indoors';
	readonly wet: boolean;
	readonly trainer: boolean;
	/** byte for byte the same recording as this file, which was uploaded before */
	readonly sameAs: string | null;
	/** what is special about the file; null = nothing */
	readonly note: string | null;
}
