import { LEGS, MODE, type DriveSetting, type DriveState } from './driveState';
import { enter, sprint } from './riderModes';

const BRAKING_MPS2 = 1.6;

/**
 * Brakes for a corner, a stop or slow traffic that is ahead, waits at stops and starts again.
 * @returns true while the obstacle, not the rider's wish, decides
 */
export function passObstacles(s: DriveState, setting: DriveSetting): boolean {
	if (s.mode === MODE.stopped) return wait(s, setting);
	const next = setting.road.obstacles[s.obstacle];
	const limited = limitDescent(s, setting);
	if (!next) return limited;
	const aheadM = next.atM - s.groundM;
	if (aheadM + next.lengthM < 0 && next.kind !== 'stop') {
		s.obstacle++;
		leave(s, setting);
		return false;
	}
	const brakingM = Math.max(0, s.speedMps ** 2 - next.limitMps ** 2) / (2 * BRAKING_MPS2);
	if (aheadM > brakingM + 0.5) return limited;
	if (next.kind === 'stop' && s.speedMps < 0.4) {
		s.obstacle++;
		s.speedMps = 0;
		s.shiftDown = false;
		enter(s, MODE.stopped, next.waitS);
		return wait(s, setting);
	}
	if (s.speedMps > next.limitMps + 0.1) {
		if (s.mode !== MODE.brake) startBraking(s, setting, next.kind === 'stop');
		s.brakeN = setting.spec.bike.massKg * BRAKING_MPS2;
		s.torqueWantedNm = 0;
		if (s.shiftDown) s.legs = LEGS.turn;
		s.turnRadS = 6;
		return true;
	}
	return rollThrough(s, setting, next.kind === 'corner');
}

function startBraking(s: DriveState, setting: DriveSetting, forStop: boolean): void {
	enter(s, MODE.brake, Infinity);
	s.legs = setting.riderChance.chance(0.6) ? LEGS.still : LEGS.turn;
	s.shiftDown = setting.riderChance.chance(forStop ? 0.7 : 0.35);
}

/** Slow enough: roll through a corner, pedal softly behind slow traffic; whoever arrives slowly just rides on. */
function rollThrough(s: DriveState, setting: DriveSetting, corner: boolean): boolean {
	s.brakeN = 0;
	const braked = s.mode === MODE.brake || s.mode === MODE.corner;
	if (corner && braked && s.speedMps > 2.2 && s.slope < 0.015) {
		s.mode = MODE.corner;
		return true;
	}
	if (braked || !corner) {
		s.modePowerW = setting.spec.rider.powerW * 0.6;
		enter(s, MODE.soft, 1);
	}
	return false;
}

function limitDescent(s: DriveState, setting: DriveSetting): boolean {
	if (s.speedMps < 15 || setting.spec.road.trainer) return false;
	s.legs = LEGS.still;
	s.torqueWantedNm = 0;
	s.brakeN = setting.spec.bike.massKg * 0.8;
	return true;
}

function wait(s: DriveState, setting: DriveSetting): boolean {
	if (s.timeS >= s.modeUntilS) {
		leave(s, setting);
		return false;
	}
	// some riders balance on the spot: now and then a push and a brake
	const balancing = s.modeUntilS - s.timeS < 6 && setting.spec.rider.unsteadiness > 0.2;
	const pushing = balancing && Math.floor(s.timeS * 2) % 3 === 0;
	s.legs = pushing ? LEGS.press : LEGS.still;
	s.torqueWantedNm = pushing ? 9 : 0;
	s.brakeN = pushing ? 0 : setting.spec.bike.massKg * BRAKING_MPS2;
	return true;
}

function leave(s: DriveState, setting: DriveSetting): void {
	s.brakeN = 0;
	s.shiftDown = false;
	if (setting.riderChance.chance(setting.spec.rider.sprintsOut)) return sprint(s, setting);
	s.modePowerW = setting.spec.rider.powerW * setting.riderChance.between(1, 1.6);
	// an ordinary acceleration is a sprint without haste
	enter(s, MODE.sprint, setting.riderChance.between(2, 7));
}
