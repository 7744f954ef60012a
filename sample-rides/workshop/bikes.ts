import type { BikeSpec, RecorderSpec } from '../generator/rideSpec';
import type { ProgrammeWheel } from '../programme';

/** A wheel with the test bicycle that it runs in and the sensors on it. */
export interface PlannedWheel {
	readonly told: ProgrammeWheel;
	readonly bike: BikeSpec;
	readonly recorder: RecorderSpec;
}

const HUB = 'rear hub of a gravel touring bicycle, 142 mm over the end caps, thru-axle, pawl freehub';

/** One-second recording without faults beyond rounding; each wheel's entry says what differs. */
const RECORDER: RecorderSpec = {
	speed: {
		kind: 'rear rate',
		circumferenceM: 2.2,
		noise: 0.004,
		resolutionMps: 0.001,
		lagS: 0.6,
		updateS: 1,
		dipsPerHour: 0.4
	},
	cadence: {
		kind: 'rate',
		noise: 0.006,
		resolutionRpm: 1,
		lagS: 0.4,
		updateS: 1,
		freezeS: 0,
		spikesPerHour: 0.1
	},
	power: { kind: 'second', noise: 0.02, scale: 1, lagS: 0.5, updateS: 1, averageS: 1 },
	smart: false,
	autoPause: true,
	gapsPerHour: 0,
	gapS: 0,
	sensorLossPerHour: 0,
	position: true
};

const BIKE = {
	massKg: 96,
	rollingResistance: 0.008,
	dragAreaM2: 0.42,
	efficiency: 0.97,
	chainSlackDeg: 3,
	chainSkip: { sprockets: [], perHour: 0 }
};

/** The three wheels of the invented workshop. */
export const WHEELS: readonly PlannedWheel[] = [wheelOne(), wheelTwo(), wheelThree()];

function wheelOne(): PlannedWheel {
	const chainrings = [46, 30];
	const cassette = [11, 12, 13, 14, 16, 18, 20, 23, 26, 30, 34];
	return {
		told: {
			id: 'W1',
			name: 'Wheel 1',
			hub: HUB,
			circumferenceM: 2.19,
			chainrings,
			cassette,
			speedSensor: 'rear'
		},
		bike: {
			...BIKE,
			chainrings,
			cassette,
			circumferenceM: 2.182,
			shifting: {
				delayS: 0.15,
				loadKept: 0.5,
				overshoot: 0.005,
				regret: 0.02,
				recorded: true,
				recordedLeadS: 1,
				recordedChainrings: chainrings,
				// the device was never told about the cassette that is fitted now
				recordedCassette: [11, 12, 13, 14, 15, 17, 19, 22, 25, 28, 32]
			}
		},
		recorder: {
			...RECORDER,
			speed: { ...RECORDER.speed, circumferenceM: 2.19 },
			power: { ...RECORDER.power, kind: 'turn', lagS: 0.2 }
		}
	};
}

function wheelTwo(): PlannedWheel {
	const chainrings = [40];
	const cassette = [10, 11, 13, 15, 17, 19, 21, 24, 28, 32, 38, 44];
	return {
		told: {
			id: 'W2',
			name: 'Wheel 2',
			hub: HUB,
			circumferenceM: 2.22,
			chainrings,
			cassette,
			speedSensor: 'rear'
		},
		bike: {
			...BIKE,
			chainrings,
			cassette,
			circumferenceM: 2.231,
			shifting: {
				delayS: 0.3,
				loadKept: 0.6,
				overshoot: 0.015,
				regret: 0.02,
				recorded: false,
				recordedLeadS: 0,
				recordedChainrings: chainrings,
				recordedCassette: cassette
			}
		},
		recorder: {
			...RECORDER,
			speed: { ...RECORDER.speed, kind: 'rear pulse', circumferenceM: 2.22, noise: 0.002, dipsPerHour: 1 },
			cadence: { ...RECORDER.cadence, freezeS: 2 }
		}
	};
}

function wheelThree(): PlannedWheel {
	const chainrings = [48, 31];
	const cassette = [11, 12, 13, 14, 15, 17, 19, 21, 24, 28, 32];
	return {
		told: {
			id: 'W3',
			name: 'Wheel 3',
			hub: HUB,
			circumferenceM: 2.15,
			chainrings,
			cassette,
			speedSensor: 'rear'
		},
		bike: {
			...BIKE,
			chainrings,
			cassette,
			circumferenceM: 2.155,
			shifting: {
				delayS: 0.35,
				loadKept: 0.4,
				overshoot: 0.01,
				regret: 0.02,
				recorded: false,
				recordedLeadS: 0,
				recordedChainrings: chainrings,
				recordedCassette: cassette
			}
		},
		recorder: {
			...RECORDER,
			speed: { ...RECORDER.speed, circumferenceM: 2.15, lagS: 1.1 },
			cadence: { ...RECORDER.cadence, noise: 0.009, lagS: 0.3 },
			power: { ...RECORDER.power, lagS: 0.6, scale: 1.02 }
		}
	};
}
