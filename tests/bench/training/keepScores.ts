import { writeFileSync } from 'node:fs';
import { FEATURE_NAMES } from '../../../src/lib/slip/candidateFeatures';
import type { TrueEvent } from './labelledRides';
import type { TrainingPart } from './trainingRides';

/** One ride as it is kept. */
export interface KeptRide {
	readonly name: string;
	readonly group: string;
	readonly km: number;
	readonly events: readonly TrueEvent[];
	readonly candidates: readonly {
		readonly startS: number;
		readonly logOdds: number;
		readonly sizeDeg: number;
		readonly overrunDeg: number;
		/** index in events, -1 = none, -2 = counted neither way */
		readonly event: number;
		/** in the order of FEATURE_NAMES; null = cannot be said */
		readonly features: readonly (number | null)[];
	}[];
}

/** Writes the candidates of rides with their features and what a detector that had not seen the ride gave them. */
export function keepScores(
	file: string,
	scored: readonly { part: TrainingPart; logOdds: readonly number[] }[]
): void {
	const rides = scored.map(({ part, logOdds }): KeptRide => ({
		name: part.name,
		group: part.group,
		km: part.km,
		events: part.events,
		candidates: part.startS.map((startS, i) => ({
			startS,
			logOdds: logOdds[i],
			sizeDeg: part.sizeDeg[i],
			overrunDeg: part.overrunDeg[i],
			event: part.truth[i],
			features: Array.from(part.rows[i], (value) =>
				Number.isNaN(value) ? null : Number(value.toPrecision(5))
			)
		}))
	}));
	writeFileSync(file, JSON.stringify({ features: FEATURE_NAMES, rides }));
}
