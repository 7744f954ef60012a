import type { RiderSpec, RoadSpec } from '../generator/rideSpec';

const RIDER: RiderSpec = {
	powerW: 190,
	cadenceRpm: 82,
	maxTorqueNm: 115,
	unsteadiness: 0.15,
	strokeSpread: 0.09,
	fatiguePerHour: 0.02,
	coastsPerHour: 25,
	brakeTouchesPerHour: 18,
	softPerHour: 6,
	sprintsPerHour: 3,
	sprintsOut: 0.2,
	standsPerHour: 20,
	pickUpRadS2: 20,
	composure: 0.5,
	marks: 0.85,
	idleMarksPerHour: 0
};

/** The three test riders of the invented workshop: codes only. */
export const RIDERS: Readonly<Record<string, RiderSpec>> = {
	R1: RIDER,
	R2: {
		...RIDER,
		powerW: 168,
		cadenceRpm: 76,
		unsteadiness: 0.21,
		coastsPerHour: 38,
		sprintsOut: 0.1,
		marks: 0.7
	},
	R3: {
		...RIDER,
		powerW: 214,
		cadenceRpm: 87,
		strokeSpread: 0.07,
		composure: 0.7,
		sprintsPerHour: 4,
		maxTorqueNm: 130
	}
};

const ROAD: RoadSpec = {
	hilliness: 0.02,
	slopeM: 400,
	cornersPerKm: 0.5,
	stopsPerKm: 0.06,
	slowdownsPerKm: 0.06,
	windMps: 3,
	roughness: 0.08,
	spinsPerHour: 0,
	wet: false,
	temperatureC: 17,
	trainer: false
};

/** Where they ride. */
export const SURFACES: Readonly<Record<string, RoadSpec>> = {
	road: ROAD,
	gravel: {
		...ROAD,
		hilliness: 0.025,
		cornersPerKm: 0.8,
		slowdownsPerKm: 0.15,
		roughness: 0.3,
		spinsPerHour: 3
	},
	'road and gravel': { ...ROAD, hilliness: 0.023, roughness: 0.18, spinsPerHour: 1 },
	indoors: { ...ROAD, hilliness: 0, windMps: 0, trainer: true, temperatureC: 21 }
};
