import { random, type Random } from './random';
import type {
	BikeSpec,
	HubSpec,
	RecorderSpec,
	RideSpec,
	RiderSpec,
	RoadSpec,
	ShiftingSpec
} from './rideSpec';

/** Sprockets that exist in the trade, smallest first. */
const CASSETTES = [
	[11, 12, 13, 14, 15, 17, 19, 21, 24, 28, 32],
	[11, 12, 13, 14, 15, 16, 17, 19, 21, 23, 25],
	[11, 13, 15, 17, 19, 22, 25, 28, 32, 36],
	[11, 12, 13, 14, 16, 18, 20, 23, 26, 30, 34],
	[10, 11, 12, 13, 14, 15, 17, 19, 21, 24, 28, 33],
	[11, 12, 14, 16, 18, 21, 24, 28, 32]
];
const WIDE_CASSETTES = [
	[10, 11, 13, 15, 17, 19, 21, 24, 28, 32, 38, 44],
	[10, 12, 14, 16, 18, 21, 24, 28, 32, 36, 42, 50],
	[11, 13, 15, 17, 19, 21, 24, 28, 32, 37, 42],
	[11, 13, 15, 18, 21, 24, 28, 33, 39, 45, 51]
];
const RINGS = [
	[50, 34],
	[52, 36],
	[48, 34],
	[46, 30],
	[46, 33],
	[48, 31],
	[53, 39]
];
const SINGLE_RINGS = [[38], [40], [42], [36], [32], [44]];
const CIRCUMFERENCES_M = [2.07, 2.105, 2.136, 2.155, 2.17, 2.2, 2.23, 2.29];
const POINTS = [18, 20, 24, 32, 36, 40, 54, 60, 72, 96];

/**
 * A ride of any kind on a hub that does not slip: many bicycles, riders, devices and roads.
 *
 * @param seed integer: which ride
 * @returns the spec; simulateRide(spec, seed) has no slip and no failed pick-up in its truth
 */
export function randomHealthySpec(seed: number): RideSpec {
	return randomSpec(`healthy-${seed}`, random(seed).branch('healthy spec'), false);
}

/** As randomHealthySpec, on a hub that slips: from now and then to many times an hour. */
export function randomSlippingSpec(seed: number): RideSpec {
	return randomSpec(`slipping-${seed}`, random(seed).branch('slipping spec'), true);
}

function randomSpec(name: string, chance: Random, slipping: boolean): RideSpec {
	const road = randomRoad(chance);
	const bike = randomBike(chance);
	return {
		name,
		startedAtMs: 1748672800000 + Math.floor(chance.between(0, 86400 * 300)) * 1000,
		localOffsetS: chance.pick([0, 3600, 7200]),
		maxDurationS: Math.round(chance.between(1.2, 4) * 3600),
		maxDistanceM: 150000,
		bike,
		rider: randomRider(chance),
		road,
		hub: randomHub(chance, slipping),
		recorder: randomRecorder(chance, bike, road)
	};
}

function randomBike(chance: Random): BikeSpec {
	const single = chance.chance(0.35);
	const chainrings = chance.pick(single ? SINGLE_RINGS : RINGS);
	const cassette = chance.pick(single ? WIDE_CASSETTES : CASSETTES);
	return {
		chainrings,
		cassette,
		circumferenceM: chance.pick(CIRCUMFERENCES_M) * (1 + chance.normal(0, 0.006)),
		massKg: chance.between(66, 112),
		rollingResistance: chance.between(0.004, 0.013),
		dragAreaM2: chance.between(0.28, 0.5),
		efficiency: chance.between(0.96, 0.98),
		chainSlackDeg: chance.between(1, 6),
		chainSkip: { sprockets: chance.chance(0.05) ? [chance.pick(cassette)] : [], perHour: 6 },
		shifting: randomShifting(chance, chainrings, cassette)
	};
}

function randomShifting(
	chance: Random,
	chainrings: readonly number[],
	cassette: readonly number[]
): ShiftingSpec {
	const wrong = chance.chance(0.4);
	const other = (teeth: number) =>
		wrong ? Math.max(9, Math.round(teeth * chance.between(0.89, 1.11))) : teeth;
	return {
		delayS: chance.between(0.08, 0.5),
		loadKept: chance.chance(0.35) ? chance.between(0.7, 1) : chance.between(0.15, 0.7),
		overshoot: chance.chance(0.5) ? chance.between(0, 0.08) : 0.005,
		regret: chance.between(0, 0.06),
		recorded: chance.chance(0.4),
		recordedLeadS: chance.between(0, 2),
		recordedChainrings: chainrings.map(other),
		recordedCassette: cassette.map(other)
	};
}

function randomRider(chance: Random): RiderSpec {
	const powerW = chance.between(105, 265);
	return {
		powerW,
		cadenceRpm: chance.between(64, 95),
		maxTorqueNm: chance.between(70, 150),
		unsteadiness: chance.between(0.05, 0.3),
		strokeSpread: chance.between(0.04, 0.16),
		fatiguePerHour: chance.between(0, 0.06),
		coastsPerHour: chance.logNormal(30, 0.8),
		brakeTouchesPerHour: chance.logNormal(20, 0.8),
		softPerHour: chance.logNormal(8, 0.8),
		sprintsPerHour: chance.logNormal(2, 0.8),
		sprintsOut: chance.between(0.02, 0.5),
		standsPerHour: chance.between(0, 40),
		pickUpRadS2: chance.between(10, 30),
		composure: chance.next(),
		marks: chance.chance(0.6) ? chance.between(0.5, 1) : 0,
		idleMarksPerHour: chance.chance(0.3) ? 0.4 : 0
	};
}

function randomRoad(chance: Random): RoadSpec {
	const trainer = chance.chance(0.05);
	const kind = chance.pick(['town', 'country', 'country', 'hills', 'gravel', 'plain'] as const);
	const hilliness = { town: 0.008, country: 0.014, hills: 0.034, gravel: 0.026, plain: 0.005 }[kind];
	return {
		hilliness: trainer ? 0 : hilliness * chance.between(0.6, 1.6),
		slopeM: chance.between(150, 900),
		cornersPerKm:
			{ town: 1.6, country: 0.4, hills: 0.6, gravel: 0.9, plain: 0.1 }[kind] * chance.between(0.4, 1.8),
		stopsPerKm:
			{ town: 0.6, country: 0.08, hills: 0.04, gravel: 0.05, plain: 0.02 }[kind] * chance.between(0.4, 1.8),
		slowdownsPerKm: { town: 0.3, country: 0.04, hills: 0.04, gravel: 0.2, plain: 0.01 }[kind],
		windMps: trainer ? 0 : chance.between(0, 7),
		roughness: kind === 'gravel' ? chance.between(0.15, 0.5) : chance.between(0.02, 0.15),
		spinsPerHour: kind === 'gravel' ? chance.between(0, 30) : 0,
		wet: chance.chance(0.15),
		temperatureC: Math.round(chance.between(-2, 31)),
		trainer
	};
}

function randomHub(chance: Random, slipping: boolean): HubSpec {
	const worn = chance.logNormal(20, 0.9);
	return {
		points: chance.pick(POINTS),
		slipsPerHour: slipping ? worn : 0,
		torqueExponent: chance.between(0.8, 3),
		wearKm: slipping ? chance.between(150, 900) : Infinity,
		wearExponent: chance.between(1, 2),
		kmSinceFitting: chance.between(0, 600),
		wetFactor: chance.between(1, 2),
		pickUpFactor: chance.between(1, 8),
		burstFactor: chance.between(1, 5),
		failedPickUp: slipping && chance.chance(0.5) ? chance.between(0, 0.02) : 0,
		medianOverrunDeg: chance.between(35, 110),
		overrunSigma: chance.between(0.5, 0.9),
		longSlip: chance.between(0, 0.08)
	};
}

function randomRecorder(chance: Random, bike: BikeSpec, road: RoadSpec): RecorderSpec {
	const outdoor = [
		'rear rate',
		'rear rate',
		'rear rate',
		'rear pulse',
		'rear pulse',
		'front rate',
		'front pulse',
		'gps'
	] as const;
	const kind = road.trainer ? chance.pick(['rear rate', 'virtual'] as const) : chance.pick(outdoor);
	const noisy = chance.chance(0.3);
	const commonLagS = chance.between(0, 0.8);
	const update = () => (chance.chance(0.07) ? chance.pick([2, 3]) : 1);
	return {
		speed: {
			kind,
			circumferenceM: Math.round(bike.circumferenceM * (1 + chance.normal(0, 0.012)) * 1000) / 1000,
			noise:
				kind === 'gps'
					? chance.between(0.02, 0.05)
					: noisy
						? chance.between(0.008, 0.03)
						: chance.between(0.001, 0.008),
			resolutionMps: chance.pick([0.001, 0.001, 0.001, 0.0278, 0.056]),
			lagS: commonLagS + chance.between(-0.4, 1.4),
			updateS: update(),
			dipsPerHour: chance.chance(0.35) ? chance.logNormal(2, 1) : 0
		},
		cadence: {
			kind: chance.chance(0.55) ? 'pulse' : 'rate',
			noise: noisy ? chance.between(0.01, 0.035) : chance.between(0.001, 0.012),
			resolutionRpm: 1,
			lagS: commonLagS + chance.between(-0.4, 0.9),
			updateS: update(),
			freezeS: chance.chance(0.65) ? chance.between(1.5, 3.5) : 0,
			spikesPerHour: chance.chance(0.3) ? chance.logNormal(1.2, 0.9) : 0
		},
		power: {
			kind: chance.chance(0.04) ? 'none' : chance.chance(0.5) ? 'turn' : 'second',
			noise: chance.between(0.005, 0.05),
			scale: chance.between(0.94, 1.06),
			lagS: commonLagS + chance.between(-0.4, 1.2),
			updateS: update(),
			averageS: chance.chance(0.12) ? 3 : 1
		},
		smart: chance.chance(0.07),
		autoPause: chance.chance(0.75),
		gapsPerHour: chance.chance(0.2) ? 0.5 : 0,
		gapS: chance.between(5, 60),
		sensorLossPerHour: chance.chance(0.15) ? 0.5 : 0,
		position: chance.chance(0.6)
	};
}
