import { LEGS, MODE, type DriveSetting, type DriveState } from './driveState';
import { letGo } from './stepDrive';

/**
 * Keeps the cadence near the one that the rider likes: single and double shifts, changes of the
 * chainring with the two or three sprocket shifts that make up for it, shifts that go one too far or
 * are taken back.
 */
export function planShift(s: DriveState, setting: DriveSetting, dt: number): void {
	if (stalled(s, dt)) return startAfresh(s, setting);
	if (s.planned.length) return carryOut(s, setting);
	if (s.timeS - s.shiftedAtS < 1 || s.crankRadS < 2.5) return;
	const { bike, rider } = setting.spec;
	const easierForStart = s.shiftDown && s.mode === MODE.brake;
	const radS = easierForStart ? Math.min(s.wheelRadS, 2.6 / setting.radiusM) : s.wheelRadS;
	const wishRpm = rider.cadenceRpm * wish(s);
	const off = Math.log(((radS / s.ratio) * (30 / Math.PI)) / wishRpm);
	const beside = bike.cassette[s.rear > 0 ? s.rear - 1 : 1];
	const tolerance = Math.abs(Math.log(bike.cassette[s.rear] / beside)) * 0.85 + 0.1;
	if (Math.abs(off) < tolerance || (s.legs === LEGS.still && !easierForStart)) {
		s.rpmOffS = 0;
		return;
	}
	s.rpmOffS += dt;
	// the further off, the sooner the shift
	if (s.rpmOffS < (easierForStart || Math.abs(off) > 0.33 ? 0.4 : 2.2)) return;
	s.rpmOffS = 0;
	plan(s, setting, off > 0 ? -1 : 1, Math.abs(off) > 0.45 ? 3 : Math.abs(off) > 0.22 ? 2 : 1);
}

/** Pressing without moving: the gear is too hard to start in on this slope. */
function stalled(s: DriveState, dt: number): boolean {
	const pressing = s.legs === LEGS.press && s.mode !== MODE.stopped;
	s.stallS = pressing && s.speedMps < 0.25 ? s.stallS + dt : 0;
	return s.stallS > 2.5;
}

/** The rider gets off, lifts the wheel, turns the crank by hand into an easy gear and starts again. */
function startAfresh(s: DriveState, setting: DriveSetting): void {
	const { chainrings, cassette } = setting.spec.bike;
	s.stallS = 0;
	s.planned = [];
	s.front = chainrings.length - 1;
	s.rear = cassette.length - 1;
	while (s.rear > 0 && chainrings[s.front] / cassette[s.rear] < 1) s.rear--;
	s.ratioGoal = chainrings[s.front] / cassette[s.rear];
	s.ratio = s.ratioGoal;
	letGo(s, setting);
	s.shiftedAtS = s.timeS;
	s.shifts.push({ timeS: s.timeS, front: s.front, rear: s.rear });
}

function wish(s: DriveState): number {
	if (s.mode === MODE.sprint) return 1.1;
	if (s.mode === MODE.stand) return 0.84;
	return s.slope > 0.035 ? 0.92 : 1;
}

/** @param towards -1 = harder, smaller sprockets; 1 = easier */
function plan(s: DriveState, setting: DriveSetting, towards: number, steps: number): void {
	const { bike } = setting.spec;
	const chance = setting.riderChance;
	const last = bike.cassette.length - 1;
	const toSmallRing = towards > 0 && s.front < bike.chainrings.length - 1 && s.rear >= last - 2;
	const toLargeRing = towards < 0 && s.front > 0 && s.rear <= 3;
	if ((toSmallRing || toLargeRing) && chance.chance(0.8)) {
		const front = s.front + (toSmallRing ? 1 : -1);
		const wanted = s.ratio * (toSmallRing ? 0.9 : 1.1);
		let best = s.rear;
		for (let i = 0; i <= last; i++) {
			const distance = Math.abs(Math.log(bike.chainrings[front] / bike.cassette[i] / wanted));
			if (distance < Math.abs(Math.log(bike.chainrings[front] / bike.cassette[best] / wanted))) best = i;
		}
		let atS = s.timeS;
		s.planned.push({ atS, front, rear: s.rear });
		for (let rear = s.rear; rear !== best;) {
			rear += Math.sign(best - rear);
			atS += chance.between(0.35, 1.1);
			s.planned.push({ atS, front, rear });
		}
		return;
	}
	let atS = s.timeS;
	let rear = s.rear;
	for (let i = 0; i < steps; i++) {
		const to = rear + towards;
		if (to < 0 || to > last) break;
		rear = to;
		s.planned.push({ atS, front: s.front, rear });
		atS += chance.between(0.25, 0.6);
	}
	if (!s.planned.length) {
		s.shiftedAtS = s.timeS;
		return;
	}
	addMistakes(s, setting, towards, rear, atS);
}

function addMistakes(s: DriveState, setting: DriveSetting, towards: number, rear: number, atS: number): void {
	const { bike } = setting.spec;
	const chance = setting.riderChance;
	const beyond = rear + towards;
	if (chance.chance(bike.shifting.overshoot) && beyond >= 0 && beyond < bike.cassette.length) {
		s.planned.push({ atS: atS - 0.2, front: s.front, rear: beyond });
		s.planned.push({ atS: atS + chance.between(0.6, 2.5), front: s.front, rear });
		s.confounders++;
	} else if (chance.chance(bike.shifting.regret)) {
		s.planned.push({ atS: atS + chance.between(1.5, 5), front: s.front, rear: rear - towards });
		s.confounders++;
	}
}

function carryOut(s: DriveState, setting: DriveSetting): void {
	const next = s.planned[0];
	// the chain only moves while the crank turns; a command given at rest waits
	if (s.timeS < next.atS + setting.spec.bike.shifting.delayS || s.crankRadS < 2) return;
	s.planned.shift();
	const { bike } = setting.spec;
	const ring = next.front !== s.front;
	s.front = next.front;
	s.rear = next.rear;
	s.ratioGoal = bike.chainrings[s.front] / bike.cassette[s.rear];
	const overS = setting.riderChance.between(0.05, 0.16) * (ring ? 2.5 : 1);
	s.ratioPerS = (s.ratioGoal - s.ratio) / overS;
	s.shiftUntilS = s.timeS + overS + 0.35;
	s.shiftedAtS = s.timeS;
	s.shifts.push({ timeS: s.timeS, front: s.front, rear: s.rear });
}
