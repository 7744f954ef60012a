import { LEGS, type DriveSetting, type DriveState, type OpenEvent } from './driveState';
import type { TruthKind } from './simulatedRide';

/** Hub torque at which the rates of HubSpec are stated, Nm. */
const REFERENCE_TORQUE_NM = 30;
const MAX_RATE_PER_S = 0.12;

/**
 * Lets the hub slip, or the chain skip, by chance; called 20 times a second.
 * The rate follows the torque of this instant, so that slips fall into the strong part of the stroke.
 */
export function riskSlip(s: DriveState, setting: DriveSetting, dt: number): void {
	if (!s.engaged || s.legs !== LEGS.press || s.event || s.torqueNm <= 0) return;
	const { hub, bike } = setting.spec;
	const hubTorqueNm = (s.torqueNm * bike.efficiency) / s.ratio;
	const relative = hubTorqueNm / REFERENCE_TORQUE_NM;
	if (setting.slipsPerS > 0) {
		let rate = (setting.slipsPerS * relative ** hub.torqueExponent) / setting.swingMean;
		if (s.timeS - s.engagedAtS < 1) rate *= hub.pickUpFactor;
		if (s.timeS - s.slippedAtS < 20) rate *= hub.burstFactor;
		// even a ruined clutch holds for some seconds, else a burst would feed itself without end
		if (setting.hubChance.chance(Math.min(rate, MAX_RATE_PER_S) * dt)) {
			slip(s, setting);
			return;
		}
	}
	const skipping = bike.chainSkip.sprockets.includes(bike.cassette[s.rear]);
	if (skipping && setting.hubChance.chance(((bike.chainSkip.perHour * relative ** 2) / 3600) * dt)) {
		skipChain(s, setting);
	}
}

function slip(s: DriveState, setting: DriveSetting): void {
	const { hub } = setting.spec;
	const chance = setting.hubChance;
	let crankRad = (chance.logNormal(hub.medianOverrunDeg, hub.overrunSigma) * Math.PI) / 180;
	if (chance.chance(hub.longSlip)) crankRad = chance.between(1, 3.5) * 2 * Math.PI;
	const hubRad = crankRad * s.ratio;
	const steps = hubRad / setting.stepRad;
	// the pawls fall into the next tooth that they meet, except where they only settle deeper into one
	const gapRad = steps < 1 ? hubRad : Math.round(steps) * setting.stepRad;
	s.event = begin(s, setting, 'slip', s.timeS);
	s.engaged = false;
	s.torqueNm = 0;
	s.gapRad = gapRad;
	s.leadCrankRad = 0;
	s.slippedAtS = s.timeS;
	startle(s, setting, (gapRad / s.ratio) * (180 / Math.PI));
}

function skipChain(s: DriveState, setting: DriveSetting): void {
	// one or two links: the crank turns on by whole teeth of the chainring, the hub stays engaged
	const teeth = setting.hubChance.chance(0.3) ? 2 : 1;
	const crankRad = (teeth * 2 * Math.PI) / setting.spec.bike.chainrings[s.front];
	s.event = begin(s, setting, 'chain skip', s.timeS);
	s.engaged = false;
	s.torqueNm = 0;
	s.gapRad = crankRad * s.ratio;
	s.leadCrankRad = 0;
}

/**
 * At the moment at which the clutch should take up: it may fail, and the crank runs on.
 * @returns true when the pick-up failed
 */
export function openPickUpEvent(s: DriveState, setting: DriveSetting): boolean {
	if (setting.failedPickUp <= 0 || s.legs !== LEGS.press || s.speedMps < 1.5) return false;
	const chance = setting.hubChance;
	if (!chance.chance(setting.failedPickUp)) return false;
	const moreRad =
		setting.stepRad *
		Math.max(1, Math.round((chance.logNormal(60, 0.7) * s.ratio * (Math.PI / 180)) / setting.stepRad));
	s.event = begin(s, setting, 'failed pick-up', s.leadSinceS);
	s.event.gainedCrankRad = s.leadCrankRad;
	s.event.gainedHubRad = s.leadCrankRad * s.ratio;
	s.event.hubTorqueNm = 0;
	s.event.crankTorqueNm = 0;
	s.gapRad = moreRad;
	startle(s, setting, (moreRad / s.ratio) * (180 / Math.PI));
	return true;
}

function begin(s: DriveState, setting: DriveSetting, kind: TruthKind, t0: number): OpenEvent {
	const { bike } = setting.spec;
	return {
		kind,
		t0,
		gainedHubRad: 0,
		gainedCrankRad: 0,
		hubTorqueNm: s.hubTorqueMeanNm,
		crankTorqueNm: s.crankTorqueMeanNm,
		front: bike.chainrings[s.front],
		rear: bike.cassette[s.rear],
		rpm: (s.wheelRadS / s.ratio) * (30 / Math.PI),
		km: s.groundM / 1000
	};
}

/** Writes the event into the truth, rounded as it is stored; the rider may press a lap. */
export function closeEvent(s: DriveState, setting: DriveSetting): void {
	const open = s.event;
	if (!open) return;
	const crankDeg = (open.gainedCrankRad * 180) / Math.PI;
	s.events.push({
		t0: round(open.t0, 2),
		t1: round(s.timeS, 2),
		kind: open.kind,
		crankDeg: round(crankDeg, 1),
		hubDeg: round((open.gainedHubRad * 180) / Math.PI, 1),
		hubTorqueNm: round(open.hubTorqueNm, 1),
		crankTorqueNm: round(open.crankTorqueNm, 1),
		front: open.front,
		rear: open.rear,
		rpm: Math.round(open.rpm),
		km: round(open.km, 3)
	});
	s.event = null;
	const felt = 1 / (1 + Math.exp(-(crankDeg - 70) / 15));
	if (open.kind !== 'chain skip' && setting.riderChance.chance(felt * setting.spec.rider.marks))
		s.marksS.push(Math.round(s.timeS + setting.riderChance.between(1.5, 9)));
}

/** What the rider makes of it: small slips are pedalled through, larger ones stop the legs for a while. */
function startle(s: DriveState, setting: DriveSetting, overrunDeg: number): void {
	const chance = setting.riderChance;
	const felt = 0.12 + 0.75 / (1 + Math.exp(-(overrunDeg - 60) / 20));
	if (!chance.chance(felt * (1 - 0.85 * setting.spec.rider.composure))) return;
	s.startleAtS = s.timeS + chance.between(0.2, 0.7);
	s.startleForS = Math.min(12, chance.logNormal(0.5 + overrunDeg / 150, 0.6));
}

const round = (value: number, digits: number) => Math.round(value * 10 ** digits) / 10 ** digits;
