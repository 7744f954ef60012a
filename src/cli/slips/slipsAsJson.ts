import type { RideAnalysis } from '$lib/slip/analysis';

/** The terminal command's JSON: seconds from the first record, `confidence` carries the strength of signs. */
export function slipsAsJson(file: string, startedAtMs: number, analysis: RideAnalysis) {
	return {
		file,
		startedAt: new Date(startedAtMs).toISOString(),
		totalKm: rounded(analysis.totalM / 1000, 3),
		observedKm: rounded(analysis.observedM / 1000, 3),
		drivenKm: rounded(analysis.drivenM / 1000, 3),
		observed: analysis.observed.map(({ startS, endS }) => [startS, endS]),
		warnings: analysis.warnings,
		events: analysis.events.map((event) => ({
			startS: rounded(event.startS, 3),
			endS: rounded(event.endS, 3),
			kind: event.kind,
			overrunDeg: rounded(event.overrunCrankDeg.value, 1),
			hubTorqueNm: event.hubTorqueNm && rounded(event.hubTorqueNm.value, 1),
			gear: event.gear?.label ?? null,
			confidence: rounded(event.strength, 3),
			observed: event.observed,
			reasons: event.reasons
		}))
	};
}

function rounded(value: number, digits: number): number {
	return Number(value.toFixed(digits));
}
