import { LEGS, MODE, type DriveSetting, type DriveState } from './driveState';
import { passObstacles } from './passObstacles';
import { planShift } from './planShift';
import { enter, sprint } from './riderModes';

/**
 * Decides, 20 times a second, what the rider does: how hard to press or whether to rest, brake for what
 * is ahead, and when to shift.
 */
export function planRider(s: DriveState, setting: DriveSetting, dt: number): void {
	feelRoad(s, setting, dt);
	const { rider } = setting.spec;
	s.swing +=
		(-s.swing * dt) / 25 + rider.unsteadiness * Math.sqrt((2 * dt) / 25) * setting.riderChance.normal(0, 1);
	if (s.timeS >= s.startleAtS) {
		s.startleAtS = Infinity;
		if (s.mode !== MODE.stopped) recoil(s, setting);
	}
	const held = passObstacles(s, setting);
	if (!held) pedal(s, setting, dt);
	planShift(s, setting, dt);
	if (setting.riderChance.chance((rider.idleMarksPerHour / 3600) * dt)) s.marksS.push(Math.round(s.timeS));
}

/** After a slip that was felt: softer pedalling, legs that turn without load, or legs that stop. */
function recoil(s: DriveState, setting: DriveSetting): void {
	const chance = setting.riderChance;
	if (chance.chance(0.5)) {
		s.modePowerW = setting.spec.rider.powerW * chance.between(0.15, 0.7);
		return enter(s, MODE.soft, s.startleForS);
	}
	enter(s, MODE.startled, s.startleForS);
	s.legs = chance.chance(0.6) ? LEGS.still : LEGS.turn;
}

function feelRoad(s: DriveState, setting: DriveSetting, dt: number): void {
	const { road, spec } = setting;
	while (s.piece < road.slope.length - 1 && road.fromM[s.piece + 1] <= s.groundM) s.piece++;
	const settle = Math.min(1, dt / 2.5);
	s.slope += (road.slope[s.piece] - s.slope) * settle;
	s.rolling += (road.rolling[s.piece] - s.rolling) * settle;
	const headwind = spec.road.windMps * Math.cos(road.heading[s.piece]);
	s.headwindMps += (headwind - s.headwindMps) * settle;
}

function pedal(s: DriveState, setting: DriveSetting, dt: number): void {
	const { rider, road } = setting.spec;
	if (s.timeS >= s.modeUntilS) {
		s.mode = MODE.ride;
		s.modeUntilS = Infinity;
	}
	if (s.mode === MODE.ride) chooseMode(s, setting, dt);
	s.brakeN = s.mode === MODE.check ? setting.spec.bike.massKg * s.touchMps2 : 0;
	const hours = s.timeS / 3600;
	const usualW = rider.powerW * (1 - rider.fatiguePerHour * hours) * Math.exp(s.swing);
	let powerW = usualW * terrainShare(s.slope + 0.002 * s.headwindMps);
	s.ripple = 0.75;
	if (s.mode === MODE.sprint) {
		powerW = s.modePowerW;
		s.ripple = 0.9;
	} else if (s.mode === MODE.stand) {
		powerW = usualW * 1.3;
		s.ripple = 0.95;
	} else if (s.mode === MODE.soft) powerW = s.modePowerW;
	// on a steep climb nobody falls over for lack of power: at walking pace more is given
	const slow = s.speedMps < 1.9;
	if (slow && s.slope > 0.02) powerW = Math.max(powerW, 21 * setting.spec.bike.massKg * (s.slope + 0.012));

	const resting = s.mode === MODE.rest || s.mode === MODE.startled || s.mode === MODE.check;
	if (resting) {
		if (s.legs === LEGS.press) s.legs = LEGS.still;
	} else {
		s.legs = LEGS.press;
		// downhill the road does the work; and no legs can follow a wheel this fast in the gear that is in
		const rpm = (s.wheelRadS / s.ratio) * (30 / Math.PI);
		const downhill = powerW < 0.22 * usualW && s.mode !== MODE.soft && !road.trainer;
		const topGear = s.front === 0 && s.rear === 0;
		if (downhill || (topGear && rpm > rider.cadenceRpm + 26 && s.mode !== MODE.sprint)) rest(s, setting);
		// too fast for this gear, and there is a harder one: press less until it is in
		else if (rpm > rider.cadenceRpm + 30) powerW *= 0.4;
	}
	s.turnRadS = 0.8 * rider.cadenceRpm * (Math.PI / 30);
	const torque = powerW / Math.max(1.5, s.crankRadS);
	const allOut = s.mode === MODE.sprint || s.mode === MODE.stand || slow;
	const limitNm = rider.maxTorqueNm * (allOut ? 1 : 0.62);
	// legs build up torque within a few tenths of a second
	const goal = s.legs === LEGS.press ? Math.min(limitNm, torque) : 0;
	s.torqueWantedNm += (goal - s.torqueWantedNm) * Math.min(1, dt / 0.25);
	s.loadShare = s.timeS < s.shiftUntilS ? setting.spec.bike.shifting.loadKept : 1;
}

/** Share of the usual power: more uphill, less downhill, nothing where the road does the work. */
function terrainShare(slope: number): number {
	if (slope >= 0) return Math.min(1.4, 1 + 6 * slope);
	return Math.max(0, 1 + 26 * slope);
}

function chooseMode(s: DriveState, setting: DriveSetting, dt: number): void {
	const { rider } = setting.spec;
	const chance = setting.riderChance;
	const draw = chance.next() * 3600;
	let limit = rider.coastsPerHour * dt;
	if (draw < limit) return rest(s, setting);
	limit += rider.brakeTouchesPerHour * dt;
	if (draw < limit) return touchBrake(s, setting);
	limit += rider.softPerHour * dt;
	if (draw < limit) {
		s.modePowerW = rider.powerW * chance.between(0.12, 0.5);
		return enter(s, MODE.soft, 2 + chance.exponential(7));
	}
	limit += rider.sprintsPerHour * dt;
	if (draw < limit) return sprint(s, setting);
	if (s.slope > 0.02) {
		limit += rider.standsPerHour * dt;
		if (draw < limit) enter(s, MODE.stand, 4 + chance.exponential(9));
	}
}

function touchBrake(s: DriveState, setting: DriveSetting): void {
	const chance = setting.riderChance;
	if (s.speedMps < 4 || setting.spec.road.trainer) return;
	s.touchMps2 = chance.between(0.3, 2.2);
	s.legs = chance.chance(0.8) ? LEGS.still : LEGS.turn;
	enter(s, MODE.check, 0.6 + chance.exponential(1.3));
}

function rest(s: DriveState, setting: DriveSetting): void {
	enter(s, MODE.rest, 0.8 + setting.riderChance.exponential(3.5));
	s.legs = setting.riderChance.chance(0.75) ? LEGS.still : LEGS.turn;
}
