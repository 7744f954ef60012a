import type { EvidenceCell, RideEvidence } from './evidenceRides';

/** Which part of a ride is meant, in seconds and metres from the start of the ride. */
interface Part {
	/** null = the whole ride */
	readonly part: number | null;
	readonly fromS: number;
	readonly toS: number;
	readonly fromM: number;
	readonly totalM: number;
	/** of the part */
	readonly observedM: number;
}

/**
 * What a part of a split ride tells. Events and observed stretches are cut exactly; exposure by torque and
 * hour is stored for the whole ride only, so each part takes the share that its observed distance has.
 */
export function partOfEvidence(ride: RideEvidence, part: Part): RideEvidence {
	if (part.part === null) return ride;
	const wholeM = ride.cells.reduce((sum, { observedM }) => sum + observedM, 0);
	const share = wholeM > 0 ? Math.min(1, part.observedM / wholeM) : 0;
	return {
		cells: ride.cells.map((cell): EvidenceCell => ({
			...cell,
			drivenM: cell.drivenM * share,
			observedM: cell.observedM * share,
			observedTurns: cell.observedTurns * share,
			observedPickUps: cell.observedPickUps * share
		})),
		hours: ride.hours.map(({ hour, observedM }) => ({ hour, observedM: observedM * share })),
		observed: ride.observed
			.map(({ fromM, toM }) => ({
				fromM: Math.max(0, fromM - part.fromM),
				toM: Math.min(part.totalM, toM - part.fromM)
			}))
			.filter(({ fromM, toM }) => toM > fromM),
		events: ride.events
			.filter(({ startS }) => startS >= part.fromS && startS < part.toS)
			.map((event) => ({ ...event, atM: event.atM - part.fromM })),
		temperatureC: ride.temperatureC,
		failedPickUps: ride.failedPickUps.filter((startS) => startS >= part.fromS && startS < part.toS)
	};
}
