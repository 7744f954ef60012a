import { LEGS, startState, type DriveSetting, type DriveState } from './driveState';
import { riskSlip } from './hubEvents';
import { layRoad } from './layRoad';
import { planRider } from './planRider';
import { random } from './random';
import type { RideSpec } from './rideSpec';
import type { Motion } from './simulatedRide';
import { stepDrive } from './stepDrive';

const STEP_S = 1 / 200;
const STEPS_PER_SAMPLE = 4;
const STEPS_PER_DECISION = 10;

/**
 * Rides: moves crank, driver and hub shell 200 times a second, lets the rider decide 20 times a second,
 * and keeps the running totals 50 times a second.
 *
 * @param spec the ride
 * @param seed integer; the same spec and seed give the same motion
 */
export function driveRide(spec: RideSpec, seed: number): Motion & { road: ReturnType<typeof layRoad> } {
	const setting = settle(spec, seed);
	const s = startState(setting);
	const capacity = Math.ceil(spec.maxDurationS * 50) + 2;
	const crankRad = new Float64Array(capacity);
	const wheelM = new Float64Array(capacity);
	const groundM = new Float64Array(capacity);
	const workJ = new Float64Array(capacity);
	const virtualM = new Float64Array(capacity);
	const steps = Math.floor(spec.maxDurationS / STEP_S);
	let length = 0;
	for (let step = 0; step <= steps && s.groundM < spec.maxDistanceM; step++) {
		if (step % STEPS_PER_SAMPLE === 0) {
			crankRad[length] = s.crankRad;
			wheelM[length] = s.wheelM;
			groundM[length] = s.groundM;
			workJ[length] = s.workJ;
			virtualM[length++] = s.virtualM;
		}
		if (step % STEPS_PER_DECISION === 0) {
			planRider(s, setting, STEP_S * STEPS_PER_DECISION);
			riskSlip(s, setting, STEP_S * STEPS_PER_DECISION);
			riskSpin(s, setting, STEP_S * STEPS_PER_DECISION);
			rollTrainer(s, setting, STEP_S * STEPS_PER_DECISION);
		}
		stepDrive(s, setting, STEP_S);
	}
	return {
		stepS: STEP_S * STEPS_PER_SAMPLE,
		length,
		crankRad,
		wheelM,
		groundM,
		workJ,
		virtualM,
		marksS: s.marksS.sort((a, b) => a - b),
		shifts: s.shifts,
		events: s.events,
		drivenM: s.drivenM,
		confounders: s.confounders,
		road: setting.road
	};
}

function settle(spec: RideSpec, seed: number): DriveSetting {
	const chance = random(seed);
	const { hub, road } = spec;
	const wear = 1 + (Number.isFinite(hub.wearKm) ? (hub.kmSinceFitting / hub.wearKm) ** hub.wearExponent : 0);
	const weather = road.wet ? hub.wetFactor : 1;
	let swingMean = 0;
	for (let i = 0; i < 360; i++)
		swingMean += (1 - 0.75 * Math.cos((i * Math.PI) / 180)) ** hub.torqueExponent / 360;
	return {
		spec,
		road: layRoad(road, Math.min(spec.maxDistanceM, spec.maxDurationS * 16), chance.branch('road')),
		riderChance: chance.branch('rider'),
		hubChance: chance.branch('hub'),
		radiusM: spec.bike.circumferenceM / (2 * Math.PI),
		stepRad: (2 * Math.PI) / hub.points,
		swingMean,
		slipsPerS: (hub.slipsPerHour * wear * weather) / 3600,
		failedPickUp: Math.min(0.5, hub.failedPickUp * wear * weather)
	};
}

/** Loose ground: at high torque the tyre, not the clutch, may let go for a moment. */
function riskSpin(s: DriveState, setting: DriveSetting, dt: number): void {
	const perHour = setting.spec.road.spinsPerHour;
	if (perHour <= 0 || !s.engaged || s.legs !== LEGS.press || s.spinMps > 0) return;
	const hubTorqueNm = s.torqueNm / s.ratio;
	if (hubTorqueNm < 32 || s.speedMps > 6) return;
	if (!setting.riderChance.chance(((perHour / 3600) * dt * hubTorqueNm) / 4)) return;
	s.spinGoalMps = setting.riderChance.between(0.4, 2);
	s.confounders++;
}

/** The speed that a trainer would show for this power on a flat road. */
function rollTrainer(s: DriveState, setting: DriveSetting, dt: number): void {
	const { bike } = setting.spec;
	const driveN = (s.crankTorqueMeanNm * s.crankRadS) / Math.max(2, s.virtualMps);
	const resistN = bike.massKg * 9.81 * 0.005 + 0.2 * s.virtualMps ** 2;
	s.virtualMps = Math.max(0, s.virtualMps + ((driveN - resistN) / bike.massKg) * dt);
	s.virtualM += s.virtualMps * dt;
}
