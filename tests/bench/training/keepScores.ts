import { writeFileSync } from 'node:fs';
import { FEATURE_NAMES } from '../../../src/lib/slip/candidateFeatures';
import type { TrainingPart } from './trainingRides';

/** Writes the candidates of rides with their features and what a detector that had not seen the ride gave them. */
export function keepScores(
	file: string,
	scored: readonly { part: TrainingPart; logOdds: readonly number[] }[]
): void {
	const rides = scored.map(({ part, logOdds }) => ({
		name: part.name,
		group: part.group,
		km: part.km,
		events: part.events,
		candidates: part.startS.map((startS, i) => ({
			startS,
			logOdds: logOdds[i],
			sizeDeg: part.sizeDeg[i],
			event: part.truth[i],
			features: Array.from(part.rows[i], (value) =>
				Number.isNaN(value) ? null : Number(value.toPrecision(5))
			)
		}))
	}));
	writeFileSync(file, JSON.stringify({ features: FEATURE_NAMES, rides }));
}
