import { dispersion } from '$lib/reliability/dispersion';
import { holm } from '$lib/reliability/holm';
import {
	poissonRegression,
	type FactorRow,
	type PoissonRegression
} from '$lib/reliability/poissonRegression';
import { CONFIDENCE } from '../rates/countView';
import type { Counting } from './binnedRates';
import type { BuildEvidence } from './buildEvidence';
import { unitsOf } from './buildRates';
import { cellRows, hourRows, riderFactors, temperatureRecorded } from './factorRows';

/** What is asked of every build, in this order: fixed before slips are known. */
export const FACTORS = [
	'hub torque',
	'gear',
	'picking up',
	'age',
	'wet',
	'device temperature',
	'rider',
	'hour of the ride'
] as const;
export type FactorName = (typeof FACTORS)[number];

/** How the rate goes along with one circumstance, the others held. */
export interface FactorView {
	readonly factor: FactorName;
	/** code of the rider, for 'rider' */
	readonly rider: string | null;
	/**
	 * `fit`: estimated; `unbounded`: no slip on one side; `inseparable`: it goes along with another one;
	 * `constant`: it never changed; `too few`: too few slips for so many questions; `not recorded`: on too little of the
	 * distance to be asked
	 */
	readonly kind: 'fit' | 'unbounded' | 'inseparable' | 'constant' | 'too few' | 'not recorded';
	/** times the rate: for 10 Nm, 1 of ratio, a pick-up more on each km, 100 km, wet against dry, 10 degrees warmer, this rider, one hour more; null unless `fit` */
	readonly ratio: number | null;
	readonly lower: number | null;
	readonly upper: number | null;
	/** two-sided, raised for all questions that were asked of this build (Holm); null unless `fit` */
	readonly pValue: number | null;
}

export interface DependsOn {
	readonly slips: number;
	readonly confidence: number;
	/** riders are set against this one, who rode most; null = no rider is named */
	readonly referenceRider: string | null;
	/** share of the observed distance of which nobody said whether it was wet */
	readonly wetNotSaidShare: number;
	/** share of the observed distance whose device recorded a temperature */
	readonly temperatureShare: number;
	readonly factors: readonly FactorView[];
}

/** fewer slips than this for each question: limits after a fit would pretend too much (common practice: 5 to 10) */
const SLIPS_PER_FACTOR = 5;

/** with a temperature on less of the distance than this it is not asked about (no source) */
const LEAST_TEMPERATURE_SHARE = 0.5;

/**
 * With what the slips of a build go along, each circumstance adjusted for the others by their exposure. Torque,
 * gear, pick-ups a km of the ride, age, wet, temperature and rider are fitted together; the hour by itself beside age and wet, since torque and hour
 * are not stored together. It reads as a hint for the workbench and never as a cause.
 */
export function dependsOn(evidence: BuildEvidence, counting: Counting): DependsOn {
	const riders = riderFactors(evidence.rides);
	const { share: temperatureShare } = temperatureRecorded(evidence.rides);
	const withTemperature = temperatureShare >= LEAST_TEMPERATURE_SHARE;
	const first = withTemperature ? 6 : 5;
	const cells = cellRows(evidence.rides, riders.others, counting, withTemperature);
	const hours = hourRows(evidence.rides, counting);
	const scatter = dispersion(unitsOf(evidence.rides, counting));
	const spread = Number.isNaN(scatter) ? 1 : Math.max(1, scatter);
	const together = fitOf(cells, spread);
	const byHour = fitOf(hours, spread);
	const asked: Omit<FactorView, 'pValue'>[] = [
		...(['hub torque', 'gear', 'picking up', 'age', 'wet'] as const).map((factor, place) =>
			viewOf(factor, null, together, place)
		),
		...(withTemperature ? [viewOf('device temperature', null, together, 5)] : []),
		...riders.others.map((rider, place) => viewOf('rider', rider.code, together, first + place)),
		viewOf('hour of the ride', null, byHour, 0)
	];
	const pValues = [...(together?.effects ?? []), ...(byHour?.effects.slice(0, 1) ?? [])].map(
		({ pValue }) => pValue
	);
	const corrected = holm(pValues);
	return {
		slips: cells.reduce((sum, { count }) => sum + count, 0),
		confidence: CONFIDENCE,
		referenceRider: riders.reference,
		wetNotSaidShare: notSaid(evidence),
		temperatureShare,
		factors: [
			...asked.map((factor, place) => ({
				...factor,
				pValue: factor.kind === 'fit' ? (corrected[place] ?? null) : null
			})),
			...(withTemperature || evidence.rides.length === 0 ? [] : [NOT_RECORDED])
		]
	};
}

const NOT_RECORDED: FactorView = {
	factor: 'device temperature',
	rider: null,
	kind: 'not recorded',
	ratio: null,
	lower: null,
	upper: null,
	pValue: null
};

function fitOf(rows: readonly FactorRow[], spread: number): PoissonRegression | null {
	return rows.length > 0 ? poissonRegression(rows, CONFIDENCE, spread) : null;
}

function viewOf(
	factor: FactorName,
	rider: string | null,
	fit: PoissonRegression | null,
	place: number
): Omit<FactorView, 'pValue'> {
	const effect = fit?.effects[place];
	// few slips lie on one side of much, or leave the fit without a summit: that is no finding about anything
	const few = fit && (fit.events < SLIPS_PER_FACTOR || fit.eventsPerFactor < SLIPS_PER_FACTOR);
	if (few && (fit.events < SLIPS_PER_FACTOR ? effect?.kind !== 'constant' : effect?.kind === 'unbounded'))
		return { factor, rider, kind: 'too few', ratio: null, lower: null, upper: null };
	if (!effect || effect.kind !== 'fit')
		return { factor, rider, kind: effect?.kind ?? 'too few', ratio: null, lower: null, upper: null };
	if (fit.eventsPerFactor < SLIPS_PER_FACTOR)
		return { factor, rider, kind: 'too few', ratio: null, lower: null, upper: null };
	const { ratio, lower, upper } = effect;
	return { factor, rider, kind: 'fit', ratio, lower, upper };
}

function notSaid({ rides }: BuildEvidence): number {
	const observedM = (of: typeof rides) => of.reduce((sum, ride) => sum + ride.observedM, 0);
	const all = observedM(rides);
	return all > 0 ? observedM(rides.filter(({ wet }) => wet === null)) / all : 0;
}
