import type { Ride } from '$lib/ride/ride';
import type { Bike } from './bike';
import { cadenceByTurn } from './cadenceByTurn';
import { distanceTellsMore } from './distanceTellsMore';
import type { DriveSignals } from './driveSignals';
import { gearCorrection, type GearCorrection } from './gearCorrection';
import { learnedCircumference, type LearnedCircumference } from './learnedCircumference';
import { looksLikeMotor } from './looksLikeMotor';
import { looksLikeTrainer } from './looksLikeTrainer';
import type { NamedGears } from './nameGears';
import { speedTellsPosition } from './speedTellsPosition';
import { toSeconds } from './toSeconds';

/** What a ride tells of its bike and its sensors: for a person to read and, where it asks, to decide. */
export interface RideLearning {
	/** by how much speed comes later than the cadence that belongs to it, whole seconds */
	readonly speedLagS: number;
	/** typical scatter of the proportion of crank and wheel from second to second, share */
	readonly ratioScatter: number;
	/** cadence is measured turn by turn, not as a mean over the second */
	readonly cadenceByTurn: boolean;
	readonly statedCircumferenceM: number | null;
	/** null while no three gears with known teeth were ridden */
	readonly circumference: LearnedCircumference | null;
	/** one change of what is stated that would explain the ride better; null = none is offered */
	readonly correction: GearCorrection | null;
	readonly speedSource: Ride['speedSource'];
	/** the distance agrees with the satellite track: the speed comes from it */
	readonly speedTellsPosition: boolean;
	/** the steps of the distance fit the cadence clearly better than the speed does */
	readonly distanceTellsMore: boolean;
	readonly looksLikeTrainer: boolean;
	readonly looksLikeMotor: boolean;
}

/**
 * Gathers what a ride tells of its bike and sensors. Nothing of it changes what is found or observed: a person
 * takes a correction or answers a question, and then the ride is computed anew.
 *
 * @param ride the decoded ride
 * @param signals its signals
 * @param named its gears
 * @param bike what was stated of the bike
 */
export function rideLearning(ride: Ride, signals: DriveSignals, named: NamedGears, bike: Bike): RideLearning {
	const { grid } = signals;
	const at = (name: 'altitudeM' | 'latitudeDeg' | 'longitudeDeg' | 'distanceM') =>
		toSeconds(ride.channels[name], grid.seconds);
	const { chainrings, cassette, circumferenceM } = bike;
	const stated = chainrings && cassette && circumferenceM ? { chainrings, cassette, circumferenceM } : null;
	const fromPositions = bike.speedSensor ? bike.speedSensor === 'gps' : ride.speedSource === 'position';
	const atOneHertz = !ride.channels.wheelRpm;
	return {
		speedLagS: signals.lagS,
		ratioScatter: signals.noise,
		cadenceByTurn: atOneHertz && !ride.irregular && cadenceByTurn(grid.cadenceRpm),
		statedCircumferenceM: circumferenceM ?? null,
		circumference: learnedCircumference(named.gears, stated),
		// speed from positions is off by some percent itself: it corrects nothing
		correction: stated && !fromPositions ? gearCorrection(stated, named.gears) : null,
		speedSource: ride.speedSource,
		speedTellsPosition:
			ride.channels.latitudeDeg !== undefined &&
			speedTellsPosition(grid, at('latitudeDeg'), at('longitudeDeg')),
		distanceTellsMore:
			atOneHertz && ride.channels.speedMps !== undefined && distanceTellsMore(signals, at('distanceM')).more,
		looksLikeTrainer: looksLikeTrainer(grid),
		looksLikeMotor: looksLikeMotor(grid, ride.channels.altitudeM ? at('altitudeM') : null)
	};
}
