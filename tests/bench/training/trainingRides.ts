import { random } from '../../../sample-rides/generator/random';
import { randomHealthySpec, randomSlippingSpec } from '../../../sample-rides/generator/randomSpecs';
import { simulateRide } from '../../../sample-rides/generator/simulateRide';
import { gather, type GatheredRide } from './gather';
import { insertArtefacts, insertSlips } from './insertSlips';
import { labelledRides, type LabelledRide } from './labelledRides';
import { thinRecords } from './thinRecords';

export type Origin = 'real' | 'simulated' | 'generated';

/** Candidates of one ride, and whether the ride is as it was recorded (only such rides are scored). */
export interface TrainingPart extends GatheredRide {
	readonly origin: Origin;
	readonly asRecorded: boolean;
	readonly lookAlikes: boolean;
	/** put aside to learn what can be observed: never taught to the scorer */
	readonly probe: boolean;
}

export interface TrainingPlan {
	/** copies of each healthy ride with slips put in */
	readonly slipCopies: number;
	/** copies of each healthy ride with look-alikes put in */
	readonly artefactCopies: number;
	/** generated rides of each kind, from these seeds on */
	readonly generated: number;
	readonly firstSeed: number;
	/** copies of each healthy ride with slips anywhere under load, to learn what can be observed */
	readonly probeCopies: number;
	readonly firstProbeSeed: number;
	/** generated rides of each kind for the same, from these seeds on: the scorer is not taught them */
	readonly trialRides: number;
	readonly firstSlippingTrial: number;
	readonly firstHealthyTrial: number;
}

/** Copies keep only what lies near the slips that were put in, so that no ride counts many times as healthy. */
const NEAR_S = 15;

/** A generated ride of a number; null where the spec has no sensor or is ridden indoors. */
export function generatedRide(seed: number, healthy: boolean): LabelledRide | null {
	const spec = healthy ? randomHealthySpec(seed) : randomSlippingSpec(seed);
	if (spec.road.trainer) return null;
	const { ride, truth } = simulateRide(spec, seed);
	if (!ride.channels.speedMps || !ride.channels.cadenceRpm) return null;
	return {
		name: spec.name,
		group: `generated/${seed}`,
		ride,
		bike: {
			chainrings: truth.chainrings,
			cassette: truth.cassette,
			circumferenceM: truth.circumferenceSetting,
			speedSensor: truth.speedSource === 'front' || truth.speedSource === 'gps' ? truth.speedSource : 'rear'
		},
		km: truth.km,
		events: truth.events
	};
}

/**
 * Everything that the detector learns from: labelled rides as recorded, copies of the healthy ones with slips and
 * with look-alikes put in, and generated rides. Real rides are used where their folder lies beside the project.
 */
export async function trainingRides(plan: TrainingPlan): Promise<TrainingPart[]> {
	const parts: TrainingPart[] = [];
	let seed = 1;
	for (const origin of ['real', 'simulated'] as const) {
		for (const labelled of await labelledRides(origin)) {
			parts.push({ ...gather(labelled, true), origin, asRecorded: true, lookAlikes: false, probe: false });
			if (labelled.events.length > 0 || labelled.name.includes('-slips')) continue;
			for (let k = 0; k < plan.slipCopies; k++) {
				// every third copy carries look-alikes as well
				const ride = k % 3 === 2 ? insertArtefacts(labelled.ride, 60, random(seed++)) : labelled.ride;
				const slipped = insertSlips(ride, 90, random(seed++), 0.55);
				const thin = k % 5 === 4 && origin === 'simulated';
				const recorded = thin ? thinRecords(slipped.ride, random(seed++)) : slipped.ride;
				parts.push(copy({ ...labelled, ride: recorded, events: slipped.events }, origin, !thin, k % 3 === 2));
			}
			for (let k = 0; k < plan.probeCopies; k++) {
				const slipped = insertSlips(labelled.ride, 120, random(plan.firstProbeSeed + seed++), 0.1);
				parts.push({
					...gather({ ...labelled, ...slipped }, false, (_, startS) =>
						slipped.events.some((e) => Math.abs(e.t0 - startS) < NEAR_S)
					),
					origin,
					asRecorded: false,
					lookAlikes: false,
					probe: true
				});
			}
			for (let k = 0; k < plan.artefactCopies; k++) {
				parts.push(
					copy({ ...labelled, ride: insertArtefacts(labelled.ride, 60, random(seed++)) }, origin, false, true)
				);
			}
		}
	}
	for (let k = 0; k < plan.generated; k++) {
		for (const healthy of [true, false]) {
			const labelled = generatedRide(plan.firstSeed + k, healthy);
			if (labelled) parts.push(copy(labelled, 'generated', false, false));
		}
	}
	return parts;
}

function copy(labelled: LabelledRide, origin: Origin, onlyNear: boolean, lookAlikes: boolean): TrainingPart {
	const near = (startS: number) => labelled.events.some((e) => Math.abs(e.t0 - startS) < NEAR_S);
	const wanted = (truth: number, startS: number) => truth !== -2 && (!onlyNear || truth >= 0 || near(startS));
	return { ...gather(labelled, false, wanted), origin, asRecorded: false, lookAlikes, probe: false };
}
