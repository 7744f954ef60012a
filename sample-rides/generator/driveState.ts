import type { Random } from './random';
import type { RideSpec } from './rideSpec';
import type { Road } from './layRoad';
import type { Shift, TruthEvent, TruthKind } from './simulatedRide';

/** What the legs do. */
export const LEGS = { press: 0, still: 1, turn: 2 } as const;

/** What the rider is about. */
export const MODE = {
	ride: 0,
	brake: 1,
	corner: 2,
	stopped: 3,
	rest: 4,
	soft: 5,
	sprint: 6,
	stand: 7,
	startled: 8,
	/** off the pedals and on the brake for a moment */
	check: 9
} as const;

/** A chain movement that is still to come. */
export interface PlannedShift {
	atS: number;
	front: number;
	rear: number;
}

/** A loss of drive that is under way. */
export interface OpenEvent {
	kind: TruthKind;
	t0: number;
	/** hub radians gained so far */
	gainedHubRad: number;
	/** crank radians gained so far */
	gainedCrankRad: number;
	hubTorqueNm: number;
	crankTorqueNm: number;
	front: number;
	rear: number;
	rpm: number;
	km: number;
}

/** All that moves. One object, changed in place: this is the inner loop. */
export interface DriveState {
	timeS: number;
	speedMps: number;
	groundM: number;
	wheelM: number;
	virtualM: number;
	virtualMps: number;
	crankRad: number;
	workJ: number;
	drivenM: number;
	wheelRadS: number;
	crankRadS: number;
	/** driver and shell turn together */
	engaged: boolean;
	/** hub radians until the clutch takes up drive */
	gapRad: number;
	/** the take-up that is under way: begin, and crank radians gained */
	leadSinceS: number;
	leadCrankRad: number;
	ratio: number;
	ratioGoal: number;
	ratioPerS: number;
	front: number;
	rear: number;
	legs: number;
	/** crank speed of legs that turn without load */
	turnRadS: number;
	torqueWantedNm: number;
	torqueNm: number;
	/** factor of the present pedal stroke, and which half turn it belongs to */
	stroke: number;
	halfTurn: number;
	/** depth of the torque's swing within a turn */
	ripple: number;
	loadShare: number;
	brakeN: number;
	slope: number;
	rolling: number;
	headwindMps: number;
	spinMps: number;
	spinGoalMps: number;
	hubTorqueMeanNm: number;
	crankTorqueMeanNm: number;
	engagedAtS: number;
	slippedAtS: number;
	event: OpenEvent | null;
	/** when the rider notices the event and what follows */
	startleAtS: number;
	startleForS: number;

	mode: number;
	modeUntilS: number;
	/** power of the present mode, W, where it is not the usual */
	modePowerW: number;
	/** how hard the brake is touched, m/s2 */
	touchMps2: number;
	swing: number;
	obstacle: number;
	piece: number;
	shiftUntilS: number;
	shiftedAtS: number;
	rpmOffS: number;
	/** seconds of pressing without moving */
	stallS: number;
	planned: PlannedShift[];
	shiftDown: boolean;

	events: TruthEvent[];
	shifts: Shift[];
	marksS: number[];
	confounders: number;
}

/** What stays the same through a ride. */
export interface DriveSetting {
	readonly spec: RideSpec;
	readonly road: Road;
	readonly riderChance: Random;
	readonly hubChance: Random;
	readonly radiusM: number;
	readonly stepRad: number;
	/** mean over a turn of the swing of torque to the power of the hub's exponent */
	readonly swingMean: number;
	/** slips per second at 30 Nm on this ride */
	readonly slipsPerS: number;
	readonly failedPickUp: number;
}

export function startState(setting: DriveSetting): DriveState {
	const { bike } = setting.spec;
	const rear = Math.floor(bike.cassette.length * 0.6);
	const ratio = bike.chainrings[0] / bike.cassette[rear];
	return {
		timeS: 0,
		speedMps: 0,
		groundM: 0,
		wheelM: 0,
		virtualM: 0,
		virtualMps: 0,
		crankRad: setting.riderChance.between(0, 6),
		workJ: 0,
		drivenM: 0,
		wheelRadS: 0,
		crankRadS: 0,
		engaged: false,
		gapRad: 0.1,
		leadSinceS: 0,
		leadCrankRad: 0,
		ratio,
		ratioGoal: ratio,
		ratioPerS: 0,
		front: 0,
		rear,
		legs: LEGS.press,
		turnRadS: 0,
		torqueWantedNm: 0,
		torqueNm: 0,
		stroke: 1,
		halfTurn: 0,
		ripple: 0.75,
		loadShare: 1,
		brakeN: 0,
		slope: 0,
		rolling: 1,
		headwindMps: 0,
		spinMps: 0,
		spinGoalMps: 0,
		hubTorqueMeanNm: 0,
		crankTorqueMeanNm: 0,
		engagedAtS: 0,
		slippedAtS: -1e9,
		event: null,
		startleAtS: Infinity,
		startleForS: 0,
		mode: MODE.ride,
		modeUntilS: Infinity,
		modePowerW: 0,
		touchMps2: 0,
		swing: 0,
		obstacle: 0,
		piece: 0,
		shiftUntilS: -1,
		shiftedAtS: -10,
		rpmOffS: 0,
		stallS: 0,
		planned: [],
		shiftDown: false,
		events: [],
		shifts: [],
		marksS: [],
		confounders: 0
	};
}
