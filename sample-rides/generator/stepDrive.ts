import { LEGS, type DriveSetting, type DriveState } from './driveState';
import { closeEvent, openPickUpEvent } from './hubEvents';

const GRAVITY = 9.81;
const AIR_DENSITY = 1.2;
/** two legs and crank about the crank's axis, kg m2 (estimate) */
export const LEG_INERTIA = 0.16;
/** crank speed at which a leg can give no more torque: about 205 rpm (estimate) */
const FREE_CRANK_RADS = 21.5;

/**
 * Moves bicycle, shell, driver and crank on by one step of time.
 * Engaged: the crank drives the mass, crank x ratio = shell. Not engaged: the bicycle rolls, the crank
 * follows the legs alone; drive is taken up when the driver has gained the gap on the shell.
 */
export function stepDrive(s: DriveState, setting: DriveSetting, dt: number): void {
	const { bike } = setting.spec;
	moveChain(s, setting, dt);
	moveSpin(s, dt);

	const half = Math.floor(s.crankRad / Math.PI);
	if (half !== s.halfTurn) {
		s.halfTurn = half;
		s.stroke = Math.max(0.3, setting.riderChance.normal(1, setting.spec.rider.strokeSpread));
	}
	const air = s.speedMps + s.headwindMps;
	const resistN =
		bike.massKg * GRAVITY * (s.slope + bike.rollingResistance * s.rolling) +
		0.5 * AIR_DENSITY * bike.dragAreaM2 * air * Math.abs(air) +
		s.brakeN;

	let driveN = 0;
	if (s.engaged) {
		if (s.legs !== LEGS.press) {
			letGo(s, setting);
		} else {
			const swing = 1 - s.ripple * Math.cos(2 * s.crankRad);
			s.torqueNm = s.torqueWantedNm * s.stroke * swing * s.loadShare;
			driveN = (s.torqueNm * bike.efficiency) / (s.ratio * setting.radiusM);
		}
	}
	// wheels and tyres count twice: they turn as well (about 2 kg at the rims)
	s.speedMps = Math.max(0, s.speedMps + ((driveN - resistN) / (bike.massKg + 2)) * dt);
	s.wheelRadS = (s.speedMps + s.spinMps) / setting.radiusM;

	if (s.engaged) {
		s.crankRadS = s.wheelRadS / s.ratio;
		s.workJ += s.torqueNm * s.crankRadS * dt;
		s.drivenM += s.speedMps * dt;
	} else {
		moveFreeCrank(s, setting, dt);
	}
	const fade = dt / 0.5;
	s.hubTorqueMeanNm +=
		(((s.engaged ? s.torqueNm : 0) * bike.efficiency) / s.ratio - s.hubTorqueMeanNm) * fade;
	s.crankTorqueMeanNm += ((s.engaged ? s.torqueNm : 0) - s.crankTorqueMeanNm) * fade;
	s.crankRad += s.crankRadS * dt;
	s.wheelM += s.wheelRadS * setting.radiusM * dt;
	s.groundM += s.speedMps * dt;
	s.timeS += dt;
}

/** The driver falls behind the shell: the clutch will take up again somewhere within one step. */
export function letGo(s: DriveState, setting: DriveSetting): void {
	s.engaged = false;
	s.torqueNm = 0;
	const slackHubRad = ((setting.spec.bike.chainSlackDeg * Math.PI) / 180) * s.ratio;
	s.gapRad = setting.hubChance.next() * (setting.stepRad + slackHubRad);
	s.leadCrankRad = 0;
}

function moveFreeCrank(s: DriveState, setting: DriveSetting, dt: number): void {
	const engagedRadS = s.wheelRadS / s.ratio;
	if (s.legs === LEGS.press) {
		const free = Math.max(0, 1 - s.crankRadS / FREE_CRANK_RADS);
		let gain = setting.spec.rider.pickUpRadS2;
		// once the load is gone in a slip, the torque that drove the bicycle drives the legs
		if (s.event) {
			const swing = 1 - s.ripple * Math.cos(2 * s.crankRad);
			gain = Math.max(15, (s.torqueWantedNm * s.stroke * swing) / LEG_INERTIA);
		}
		s.crankRadS += gain * free * dt;
	} else if (s.legs === LEGS.turn) {
		const goal = Math.min(s.turnRadS, 0.93 * engagedRadS);
		s.crankRadS += Math.max(-18 * dt, Math.min(12 * dt, goal - s.crankRadS));
	} else {
		s.crankRadS = Math.max(0, s.crankRadS - 22 * dt);
	}

	const leadRadS = s.crankRadS - engagedRadS;
	if (leadRadS <= 0) {
		if (s.event) {
			// the rider stopped pressing before the clutch caught
			closeEvent(s, setting);
			letGo(s, setting);
		}
		s.leadCrankRad = 0;
		return;
	}
	if (s.leadCrankRad === 0) s.leadSinceS = s.timeS;
	s.leadCrankRad += leadRadS * dt;
	s.gapRad -= leadRadS * s.ratio * dt;
	if (s.event) {
		s.event.gainedCrankRad += leadRadS * dt;
		s.event.gainedHubRad += leadRadS * s.ratio * dt;
	}
	if (s.gapRad > 0) return;
	if (!s.event && openPickUpEvent(s, setting)) return;
	if (s.event) {
		closeEvent(s, setting);
		// the legs' energy goes into the chain in one blow; the meter sees part of it
		s.workJ += 0.3 * LEG_INERTIA * (s.crankRadS * s.crankRadS - engagedRadS * engagedRadS);
	} else {
		s.engagedAtS = s.timeS;
	}
	s.engaged = true;
	s.leadCrankRad = 0;
	s.crankRadS = engagedRadS;
}

function moveChain(s: DriveState, setting: DriveSetting, dt: number): void {
	if (s.ratio === s.ratioGoal) return;
	const change = s.ratioPerS * dt;
	s.ratio = Math.abs(s.ratioGoal - s.ratio) <= Math.abs(change) ? s.ratioGoal : s.ratio + change;
	// to an easier gear: the driver falls behind the shell and the legs must catch up
	if (change < 0 && s.engaged) letGo(s, setting);
}

function moveSpin(s: DriveState, dt: number): void {
	if (s.spinMps === 0 && s.spinGoalMps === 0) return;
	if (s.spinMps < s.spinGoalMps) {
		s.spinMps += 8 * dt;
		if (s.spinMps >= s.spinGoalMps) s.spinGoalMps = 0;
	} else {
		s.spinMps = Math.max(0, s.spinMps - 5 * dt);
	}
}
