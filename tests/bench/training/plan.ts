import type { ScorerOptions } from './learnScorer';
import type { TrainingPlan } from './trainingRides';

const number = (name: string, otherwise: number) => Number(process.env[name] ?? otherwise);
/** What is gathered, unless variables of the environment say otherwise. */
export const PLAN: TrainingPlan = {
	slipCopies: number('SLIP_COPIES', 12),
	artefactCopies: number('ARTEFACT_COPIES', 3),
	generated: number('GENERATED', 100),
	firstSeed: 1000,
	probeCopies: number('PROBES', 3),
	firstProbeSeed: 9000,
	trialRides: number('TRIAL_RIDES', 300),
	firstSlippingTrial: 20_000,
	firstHealthyTrial: 30_000
};

/** How the scorer is grown, likewise. */
export const OPTIONS: ScorerOptions = {
	sets: number('SETS', 3),
	nets: number('NETS', 2),
	trees: number('TREES', 150),
	depth: number('DEPTH', 5),
	learningRate: number('RATE', 0.12),
	seed: number('SEED', 7),
	realWeight: number('REAL_WEIGHT', 6),
	largeWeight: number('LARGE_WEIGHT', 2),
	generatedWeight: number('GENERATED_WEIGHT', 0.8),
	simulatedWeight: number('SIMULATED_WEIGHT', 2),
	lookAlikeWeight: number('LOOKALIKE_WEIGHT', 0.3)
};
