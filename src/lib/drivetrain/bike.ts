/** What is known of a bike before a ride is read. Every field is optional: what is not given is learned. */
export interface Bike {
	/** teeth of each chainring */
	readonly chainrings?: readonly number[];
	/** teeth of each sprocket */
	readonly cassette?: readonly number[];
	/** rolled circumference of the driven wheel's tyre in metres */
	readonly circumferenceM?: number;
	/** the wheel (or the receiver) that the recorded speed comes from */
	readonly speedSensor?: 'rear' | 'front' | 'gps';
	/** where power is measured; the drivetrain's losses count only for power measured before it */
	readonly powerAt?: 'crank' | 'hub';
}

/** One gear as the ride shows it. */
export interface Gear {
	/** "48/17" where tooth counts are known, else "2.82:1" */
	readonly label: string;
	/** chainring / sprocket = wheel turns per crank turn */
	readonly ratio: number;
	/** metres per crank turn, learned from the ride */
	readonly developmentM: number;
	readonly chainring: number | null;
	readonly sprocket: number | null;
	/** seconds of the ride in this gear */
	readonly seconds: number;
}
