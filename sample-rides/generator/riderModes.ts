import { MODE, type DriveSetting, type DriveState } from './driveState';

/** Enters a mode for so many seconds. */
export function enter(s: DriveState, mode: number, forS: number): void {
	s.mode = mode;
	s.modeUntilS = s.timeS + forS;
}

/** A hard acceleration of some seconds. */
export function sprint(s: DriveState, setting: DriveSetting): void {
	s.modePowerW = setting.spec.rider.powerW * setting.riderChance.between(1.7, 3.4);
	enter(s, MODE.sprint, setting.riderChance.between(3, 10));
}
